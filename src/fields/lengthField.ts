import { z } from "zod";
import type { Length } from "../units/length.ts";
import { type LengthFault, normaliseLengthText, parseLength } from "../units/parseLength.ts";
import { type Fault, refuse } from "./fault.ts";

/** True of figures such as 3.6 or 2,45, which are metres or feet more often than inches or centimetres. */
function smallDecimal(figures: string): boolean {
  return /^\d[.,]\d+$/.test(figures);
}

function explain(fault: LengthFault, text: string, near: string): Fault {
  switch (fault) {
    case "empty":
      return {
        code: "length-empty",
        message: "A length is missing here.",
        expected: `a length with its unit`,
        hint: `Write it with its unit, for example 84 1/2" or 214 cm.`,
      };
    case "no-unit":
      return {
        code: "length-without-unit",
        message: `“${text}” has no unit.`,
        expected: "a length with its unit",
        hint: smallDecimal(near)
          ? `Write ${near} m for metres, or ${near}", ${near} ft or ${near} cm, as it was measured.`
          : `Write ${near}" for inches or ${near} cm for centimetres.`,
      };
    case "unknown-unit":
      return {
        code: "length-unit-unknown",
        message: `“${near}” is not a unit of length.`,
        expected: `", ', in, ft, yd, mm, cm or m`,
        hint: /^rolls?$/i.test(near)
          ? "Write the length of all of them together: 5 rolls of 10.05 m are 50.25 m."
          : `Write for example 84", 7' 2", 2.14 m or 214 cm.`,
      };
    case "negative":
      return {
        code: "length-negative",
        message: `“${text}” is less than nothing.`,
        expected: "a length of zero or more",
        hint: "Take the minus sign away.",
      };
    case "too-long":
      return {
        code: "length-too-long",
        message: `“${text}” is longer than a kilometre.`,
        expected: "a length found in a room",
        hint: "Look at the unit: perhaps m stands where mm or cm was meant.",
      };
    case "comma":
      return {
        code: "length-comma",
        message: `“${text}” can be read in two ways: with a thousands comma or a decimal comma.`,
        expected: "a length without a comma",
        hint: `Write ${text.replace(",", "")} or ${text.replace(",", ".")}.`,
      };
    default:
      return {
        code: "length-unreadable",
        message: `“${text}” cannot be read as a length.`,
        expected: "a length with its unit",
        hint: `Write for example 84 1/2", 7' 2", 2.14 m or 214 cm.`,
      };
  }
}

/** A length of zero or more as a person writes it, read exactly. */
export function lengthField() {
  return z
    .string()
    .transform((text, context): Length => {
      const read = parseLength(text);
      return read.ok ? read.length : refuse(context, text, explain(read.fault, text, read.near));
    })
    .meta({ examples: [`84 1/2"`, "214 cm"] });
}

/** A length that must be more than nothing: a width, a repeat, what a photograph shows. */
export function positiveLengthField() {
  return z
    .string()
    .transform((text, context): Length => {
      const read = parseLength(text);
      if (!read.ok) return refuse(context, text, explain(read.fault, text, read.near));
      if (read.length.isZero()) {
        return refuse(context, text, {
          code: "length-zero",
          message: "This length is zero.",
          expected: "a length of more than zero",
          hint: "Write the measure, or leave the line out until it is known.",
        });
      }
      return read.length;
    })
    .meta({ examples: [`54"`, "137 cm"] });
}

/** Two or three lengths with `x`, `×` or `by` between: width by height (by depth). All are more than zero. */
export function sizeField(count: 2 | 3) {
  return z
    .string()
    .transform((text, context): Length[] => {
      const parts = normaliseLengthText(text)
        .split(/\s*(?:×|\bby\b|(?<=["'a-z\d\s])x(?=[\s\d.]))\s*/i)
        .filter((p) => p !== "");
      const named = count === 2 ? "width x height" : "width x depth x height";
      if (parts.length !== count) {
        return refuse(context, text, {
          code: "size-parts",
          message: `“${text}” is not ${named}.`,
          expected: named,
          hint:
            count === 2
              ? `Write for example 20" x 20" or 50 cm x 50 cm.`
              : `Write for example 31" x 34" x 36" or 79 cm x 86 cm x 91 cm.`,
        });
      }
      const lengths: Length[] = [];
      for (const [at, part] of parts.entries()) {
        const read = parseLength(part);
        if (!read.ok) {
          const fault = explain(read.fault, part, read.near);
          // `20 x 20"` is how people write; still each measure wants its own unit, so that none is guessed.
          return refuse(context, text, {
            ...fault,
            message: `${fault.message.replace(/\.$/, "")} (measure ${at + 1} of “${text}”).`,
          });
        }
        if (read.length.isZero()) {
          return refuse(context, text, {
            code: "length-zero",
            message: `Measure ${at + 1} of “${text}” is zero.`,
            expected: "lengths of more than zero",
          });
        }
        lengths.push(read.length);
      }
      return lengths;
    })
    .meta({ examples: [count === 2 ? `20" x 20"` : `31" x 34" x 36"`] });
}

/** Two lengths of zero or more with `x` between: a point on the floor, from the left and from the far wall. */
export function pointField() {
  return z
    .string()
    .transform((text, context): Length[] => {
      const parts = normaliseLengthText(text)
        .split(/\s*(?:×|\bby\b|(?<=["'a-z\d\s])x(?=[\s\d.]))\s*/i)
        .filter((p) => p !== "");
      const lengths = parts.map(parseLength);
      const bad = lengths.findIndex((l) => !l.ok);
      if (parts.length !== 2 || bad >= 0) {
        return refuse(context, text, {
          code: "point-unreadable",
          message: `“${text}” is not a place on the floor.`,
          expected: "two lengths with x between",
          hint: `Write for example 9' x 6' or 2.7 m x 1.8 m: first from the left-hand (west) wall, then from the top (north) wall.`,
        });
      }
      return lengths.map((l) => (l as { length: Length }).length);
    })
    .meta({ examples: [`9' x 6'`] });
}
