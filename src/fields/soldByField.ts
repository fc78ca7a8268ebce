import { z } from "zod";
import { Length } from "../units/length.ts";
import { parseLength } from "../units/parseLength.ts";
import { refuse } from "./fault.ts";

/** The step that a cloth is sold in: a length, or a whole of what the card says elsewhere. */
export type SoldBy = Length | "repeat" | "bolt";

const WHOLE: Readonly<Record<string, "repeat" | "bolt">> = {
  repeat: "repeat",
  repeats: "repeat",
  "whole repeats": "repeat",
  bolt: "bolt",
  bolts: "bolt",
  "whole bolts": "bolt",
  piece: "bolt",
};

/** A step of cloth: a length of more than zero with its unit, or the word `repeat` or `bolt`. */
export function soldByField() {
  return z
    .string()
    .transform((text, context): SoldBy => {
      const word =
        WHOLE[
          text
            .trim()
            .toLowerCase()
            .replace(/[\s-]+/g, " ")
        ];
      if (word) return word;
      const read = parseLength(text);
      if (read.ok && read.length.compare(Length.zero) > 0) return read.length;
      return refuse(context, text, {
        code: "sold-by-unreadable",
        message: `“${text}” is no step that cloth is sold in.`,
        expected: "a length with its unit, repeat or bolt",
        hint: "Write for example 1/4 yd, 0.1 m, repeat (whole repeats) or bolt (whole bolts only).",
      });
    })
    .meta({ examples: ["1/4 yd", "repeat"] });
}
