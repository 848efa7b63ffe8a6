import { describe, expect, test } from "vitest";
import { linkFaults } from "./site.js";

const faultsOf = (body: string, files: readonly string[] = []): string[] =>
  linkFaults(
    [
      { path: "guides/one.html", html: `<h1 id="top">One</h1>${body}` },
      { path: "two.html", html: `<h2 id="it&#39;s">Two</h2>` },
    ],
    (path) => files.includes(path),
  ).map(({ target, why }) => `${target} ${why}`);

describe("links of a site", () => {
  test.each([
    '<a href="../two.html">x</a>',
    `<a class="y" href="../two.html#it's">x</a>`,
    '<a href="../two.html#it&#39;s">x</a>',
    '<a href="#top">x</a>',
    '<a href="#">x</a>',
    '<a href="https://example.org/a">x</a>',
    '<script>const text = `<a href="nowhere.html">`;</script>',
    '<img src="data:image/png;base64,AA==" alt="">',
  ])("may be %s", (body) => {
    expect(faultsOf(body)).toEqual([]);
  });

  test.each([
    ['<a href="two.html">x</a>', "two.html is no file"],
    ['<a href="../two.html#top">x</a>', "../two.html#top is no anchor"],
    ['<a href="#bottom">x</a>', "#bottom is no anchor"],
    ['<script src="https://example.org/a.js"></script>', "https://example.org/a.js is loaded from elsewhere"],
    ['<link rel="stylesheet" href="//example.org/a.css">', "//example.org/a.css is loaded from elsewhere"],
    ['<img src="a.png" alt="">', "a.png is no file"],
  ])("may not be %s", (body, fault) => {
    expect(faultsOf(body)).toEqual([fault]);
  });

  test("may lead to files that are no pages", () => {
    expect(faultsOf('<img src="a.png" alt="">', ["guides/a.png"])).toEqual([]);
  });
});
