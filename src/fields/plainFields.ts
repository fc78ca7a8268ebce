import Fraction from "fraction.js";
import { z } from "zod";
import { refuse } from "./fault.ts";
import { nearest } from "./suggest.ts";
import { sameWord } from "./vocabulary.ts";

/** Words as they stand; never empty. */
export function textField() {
  return z.string().transform((text, context): string => {
    const clean = text.trim();
    return clean === ""
      ? refuse(context, text, {
          code: "text-empty",
          message: "Nothing is written here.",
          expected: "some words",
          hint: "Write it, or take the line out.",
        })
      : clean;
  });
}

/** yes or no (also true and false). */
export function yesNoField() {
  return z
    .string()
    .transform((text, context): boolean => {
      const word = text.trim().toLowerCase();
      if (word === "yes" || word === "true") return true;
      if (word === "no" || word === "false") return false;
      return refuse(context, text, {
        code: "yes-or-no",
        message: `“${text}” is neither yes nor no.`,
        expected: "yes or no",
        hint: "Write yes or no.",
      });
    })
    .meta({ examples: ["yes", "no"] });
}

/** A whole number of at least `least`. */
export function countField(least = 1, most = 10_000) {
  return z
    .string()
    .transform((text, context): number => {
      const clean = text.trim();
      const value = /^\d+$/.test(clean) ? Number(clean) : Number.NaN;
      if (value >= least && value <= most) return value;
      return refuse(context, text, {
        code: "count-unreadable",
        message: `“${text}” is not a whole number from ${least} to ${most}.`,
        expected: `a whole number from ${least} to ${most}`,
        hint: "Write it in figures, without a unit.",
      });
    })
    .meta({ examples: ["2"] });
}

/** A decimal or fraction without a unit, exact: fullness 2.25, markup 1.9. More than zero. */
export function ratioField() {
  return z
    .string()
    .transform((text, context): Fraction => {
      const clean = text.trim().replace(/^(\d+),(\d+)$/, "$1.$2");
      if (/^\d+(\.\d+)?$/.test(clean) && Number(clean) > 0) return new Fraction(clean);
      return refuse(context, text, {
        code: "ratio-unreadable",
        message: `“${text}” is not a number of more than zero.`,
        expected: "a number such as 2.25",
        hint: "Write it in figures, without a unit.",
      });
    })
    .meta({ examples: ["2.25"] });
}

/**
 * A share from 0 to 100 per cent, with or without the sign, exact; the value is the share of one. A number below one stands for a part of
 * one as often as for a part of one per cent, so that it wants its sign.
 */
export function percentField() {
  return z
    .string()
    .transform((text, context): Fraction => {
      const clean = text
        .trim()
        .replace(/\s*%$/, "")
        .replace(/^(\d+),(\d+)$/, "$1.$2");
      const value = /^\d+(\.\d+)?$/.test(clean) ? Number(clean) : Number.NaN;
      if (value > 0 && value < 1 && clean === text.trim().replace(",", ".")) {
        const hundredfold = new Fraction(clean).mul(100).toString();
        return refuse(context, text, {
          code: "percent-or-part",
          message: `“${text.trim()}” can be read in two ways: as ${hundredfold} %, or as ${clean} %.`,
          expected: "a share with its sign",
          hint: `Write ${hundredfold} % or ${clean} %.`,
        });
      }
      if (value <= 100) return new Fraction(clean).div(100);
      return refuse(context, text, {
        code: "percent-unreadable",
        message: `“${text}” is not a share from 0 to 100 %.`,
        expected: "a share such as 8.25 %",
        hint: "Write it in figures, with or without %.",
      });
    })
    .meta({ examples: ["8.25 %"] });
}

/** What a cloth loses of its length, as a share: less than half, since a cut is divided by what is left of it. */
export function lossField() {
  return percentField()
    .transform((share, context): Fraction => {
      if (share.compare(new Fraction(1, 2)) < 0) return share;
      return refuse(context, `${share.mul(100).toString()} %`, {
        code: "loss-too-large",
        message: `A cloth that loses ${share.mul(100).toString()} % of its length cannot be cut for.`,
        expected: "a share such as 3 %",
        hint: "Write what the supplier states, or what a washed piece of it lost.",
      });
    })
    .meta({ examples: ["3 %"] });
}

/** A screen colour `#efe3c8`, kept in small letters. */
export function colourField() {
  return z
    .string()
    .transform((text, context): string => {
      const clean = text.trim().toLowerCase();
      if (/^#[0-9a-f]{6}$/.test(clean)) return clean;
      if (/^#[0-9a-f]{3}$/.test(clean)) return `#${[...clean.slice(1)].map((c) => c + c).join("")}`;
      // A word processor's quotation marks are letters to YAML, and so part of the text.
      const within = /^[“”„‟‘’«»]+(.*?)[“”„‟‘’«»]+$/.exec(clean)?.[1];
      return refuse(context, text, {
        code: "colour-unreadable",
        message: within
          ? `${text.trim()} stands in curved quotation marks, which are read as part of it.`
          : `“${text}” is not a colour.`,
        expected: `# and six figures or letters a to f, in quotes`,
        hint: within
          ? `Type straight ones: "${within}".`
          : `Write for example "#efe3c8", with the quotes.`,
      });
    })
    .meta({ examples: ["#efe3c8"] });
}

const NAME = /^[\p{L}\p{N}][^\p{Cc}/\\<>:"|?*#%]*$/u;

function name(text: string, what: string, context: Parameters<typeof refuse>[0]): string {
  const clean = text.trim().normalize("NFC");
  if (NAME.test(clean) && clean.length <= 200 && !clean.endsWith(".")) return clean;
  return refuse(context, text, {
    code: "name-unreadable",
    message: `“${text}” cannot be the name of ${what}.`,
    expected: "a name that begins with a letter or a figure",
    hint: 'Leave out / \\ < > : " | ? * # and %.',
  });
}

/**
 * The short name by which one place points at another: a file's name without .md, a wall's, a window's, a maker's. What it points
 * at (`a cloth`, `a window or an object`) is kept in the schema, and `records/` checks that it is there.
 */
export function refField(what: string) {
  return z
    .string()
    .transform((text, context): string => name(text, what, context))
    .meta({ ref: what });
}

/** The name that a wall, window or door is given, by which others point at it. */
export function nameField(what: string) {
  return z.string().transform((text, context): string => name(text, what, context));
}

/** The name of a picture that lies beside the card, kept exactly as typed. */
export function pictureField() {
  return z
    .string()
    .transform((text, context): string => {
      const clean = text.trim();
      const code = "picture-name";
      if (/[/\\]/.test(clean))
        return refuse(context, text, {
          code,
          message: `“${text}” is not in the card's own folder.`,
          expected: "the picture's name",
          hint: "Put the picture beside the card, and write its name alone.",
        });
      // biome-ignore lint/suspicious/noControlCharactersInRegex: no file of ours has them in its name
      if (/^\.|[\u0000-\u001f]/.test(clean) || clean === "")
        return refuse(context, text, {
          code,
          message: `“${text}” cannot be the name of a picture.`,
          expected: "a name such as fern-trellis.jpg",
        });
      if (/\.svgz?$/i.test(clean))
        return refuse(context, text, {
          code,
          message: `“${text}” is a drawing, not a photograph.`,
          expected: "a JPEG, PNG, WebP or TIFF picture",
        });
      return clean;
    })
    .meta({ ref: "a picture", examples: ["fern-trellis.jpg"] });
}

/** One of some words; synonyms of the other vocabulary are read as their partner. */
export function wordField<const W extends string>(
  words: readonly W[],
  synonyms: Readonly<Record<string, W>> = {},
) {
  return z
    .string()
    .transform((text, context): W => {
      const clean = text
        .trim()
        .toLowerCase()
        .replace(/[\s_]+/g, "-");
      const word =
        words.find((w) => w.toLowerCase() === clean) ??
        synonyms[clean] ??
        (sameWord(clean, words) as W | undefined);
      if (word !== undefined) return word;
      const near = nearest(clean, words);
      return refuse(context, text, {
        code: "word-unknown",
        message: `“${text}” is not one of the words that can stand here.`,
        expected: words.join(", "),
        hint: near === null ? `Write one of these: ${words.join(", ")}.` : `Did you mean ${near}?`,
      });
    })
    .meta({ words: [...words] });
}

/** A list; a lone word is not stretched into one, since `a, b` without brackets is a mistake that must be seen. */
export function listField<T extends z.ZodType>(entry: T) {
  return z.array(entry);
}

/** A code of ISO 4217, in capitals; the list is that of the runtime's own data (ICU). */
export function currencyField() {
  return z
    .string()
    .transform((text, context): string => {
      const clean = text.trim().toUpperCase();
      const known = Intl.supportedValuesOf("currency");
      if (known.includes(clean)) return clean;
      return refuse(context, text, {
        code: "currency-unknown",
        message: `“${text}” is not a currency's code.`,
        expected: "a code of three letters",
        hint: "Write for example USD, CAD, GBP or EUR.",
      });
    })
    .meta({ examples: ["USD"] });
}
