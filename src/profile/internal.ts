/** What other modules of the library use of this one, and no entry shows. */
export { readProfile } from "./parse-profile.js";
export { outOf, upOf } from "./tilt.js";
