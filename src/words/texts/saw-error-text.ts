import { checkWord } from "../../core/check.js";
import { readStored } from "../../core/stored.js";
import type { SawErrors, SawFaultEffect } from "../../frame/index.js";
import { sawFaultEffect } from "../../frame/internal.js";
import { englishSawFaults, englishSawMoves } from "../catalog/saw-fault-words.js";
import { checkWords, type WordsOptions } from "../tell-options.js";

/**
 * Says what a fault of the saw does to a frame.
 *
 * @param fault - one of the faults of a plan's `assembly.sawErrors`
 * @param options - the words
 * @returns a sentence without numbers
 * @throws {InputError} when the fault is none
 * @example
 * ```ts
 * import { planFrame } from "miterwright/frame";
 * import { sawFaultText } from "miterwright/words";
 *
 * const { assembly } = planFrame({ sides: 6, opening: { side: 200 }, measured: { levelWidth: 40 } });
 * sawFaultText(assembly.sawErrors!.faults[2]!);
 * //=> "A blade off upright where it reads upright: both ends are off alike, which adds up in every joint and dishes the frame."
 * ```
 */
export function sawFaultText(fault: SawFaultEffect, options: WordsOptions = {}): string {
  const read = readStored(fault, "fault", sawFaultEffect);
  const words = checkWords(options);
  return (words?.sawFaults ?? englishSawFaults)[read.fault]({ effect: read.effect, outcomes: read.outcomes });
}

/**
 * Says how the stick comes from the cut of its end to that of its start, and what goes to the other hand meanwhile.
 *
 * @param move - of a plan's `assembly.sawErrors`
 * @param options - the words
 * @returns a sentence
 * @throws {InputError} when the move is neither of the two
 * @example
 * ```ts
 * import { sawMoveText } from "miterwright/words";
 *
 * sawMoveText("slide-past-the-blade");
 * //=> "The stick slides past the blade between its ends: gauge and blade both go to the other hand."
 * ```
 */
export function sawMoveText(move: SawErrors["move"], options: WordsOptions = {}): string {
  const read = checkWord(move, "move", ["flip-end-for-end", "slide-past-the-blade"]);
  const words = checkWords(options);
  return (words?.sawMoves ?? englishSawMoves)[read]();
}
