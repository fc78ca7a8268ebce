import { expect, test } from "vitest";
import type { z } from "zod";
import { amountField, rateField } from "../../src/fields/amountField.ts";
import { closedField } from "../../src/fields/closedField.ts";
import { dateField } from "../../src/fields/dateField.ts";
import { faultOf } from "../../src/fields/fault.ts";
import { pointField, positiveLengthField, sizeField } from "../../src/fields/lengthField.ts";
import {
  colourField,
  countField,
  currencyField,
  percentField,
  pictureField,
  ratioField,
  refField,
  textField,
  wordField,
  yesNoField,
} from "../../src/fields/plainFields.ts";
import { spotField } from "../../src/fields/regionField.ts";
import { VOCABULARY } from "../../src/fields/vocabulary.ts";
import { workField } from "../../src/fields/workField.ts";

/** What a field makes of a text: its value in plain words, or the code of its fault. */
function made(field: z.ZodType, text: string): unknown {
  const read = field.safeParse(text);
  if (!read.success) return `! ${read.error.issues.map((issue) => faultOf(issue)?.code).join(" ")}`;
  return JSON.parse(
    JSON.stringify(read.data, (_, value) => (typeof value === "bigint" ? Number(value) : value)),
  );
}

const HEADING = wordField(["pinch-pleat", "eyelet", "slot"], { pinch: "pinch-pleat" });
const REF = refField("a cloth");
const closed = (from: string, to: string, what: string | null) => ({ from, to, what });

test.each<[string, z.ZodType, string, unknown]>([
  ["a place in a picture", spotField(), "46% 50 %", { x: 0.46, y: 0.5 }],
  ["a place in a picture", spotField(), "0%, 100%", { x: 0, y: 1 }],
  ["a place in a picture", spotField(), "46% 101%", "! spot-unreadable"],
  ["a place in a picture", spotField(), "46 50", "! spot-unreadable"],
  ["words", textField(), "  Bay  ", "Bay"],
  ["words", textField(), " ", "! text-empty"],
  ["yes", yesNoField(), "Yes", true],
  ["no", yesNoField(), "no", false],
  ["no", yesNoField(), "perhaps", "! yes-or-no"],
  ["a date", dateField(), "2028-02-29", "2028-02-29"],
  ["a date", dateField(), "2026-02-29", "! date-unreadable"],
  ["a date", dateField(), "4 March 2026", "! date-unreadable"],
  ["a closed day", closedField(), "2026-12-25", closed("2026-12-25", "2026-12-25", null)],
  [
    "a closed day",
    closedField(),
    "2026-12-24 to 2027-01-01 Christmas, and the first of the year",
    closed("2026-12-24", "2027-01-01", "Christmas, and the first of the year"),
  ],
  ...["2026-12-24/2027-01-01", "2026-12-24 - 2027-01-01", "2026-12-24–2027-01-01"].map(
    (typed) =>
      ["a closed day", closedField(), typed, closed("2026-12-24", "2027-01-01", null)] as [
        string,
        z.ZodType,
        string,
        unknown,
      ],
  ),
  [
    "a closed day",
    closedField(),
    "2026-12-25: Christmas",
    closed("2026-12-25", "2026-12-25", "Christmas"),
  ],
  ["a closed day", closedField(), "2027-02-31", "! date-unreadable"],
  ["a closed day", closedField(), "2027-02-20 to 2027-02-31", "! date-unreadable"],
  ["a closed day", closedField(), "24/12/2026 to 1/1/2027", "! date-unreadable"],
  ["a closed day", closedField(), "2027-08-20 to 2027-08-02", "! closed-ends-first"],
  ["a closed day", closedField(), "2026-12-24 to 2027-12-31", "! closed-too-long"],
  [
    "a closed day",
    closedField(),
    "2027-01-01 to 2027-04-01",
    closed("2027-01-01", "2027-04-01", null),
  ],
  ["a closed day", closedField(), "2027-01-01 to 2027-04-02", "! closed-too-long"],
  ["a closed day", closedField(), "2026-12-24 to", "! closed-unreadable"],
  ["a closed day", closedField(), "2026-12-24 to Christmas", "! closed-unreadable"],
  ["a closed day", closedField(), "Christmas", "! closed-unreadable"],
  ["a closed day", closedField(), "all of August", "! closed-unreadable"],
  ["a count", countField(), "3", 3],
  ["a count", countField(), "0", "! count-unreadable"],
  ["a count", countField(), "2.5", "! count-unreadable"],
  ["a count", countField(2, 5), "6", "! count-unreadable"],
  ["a count", countField(), "9".repeat(40), "! count-unreadable"],
  ["a share", percentField(), "101 %", "! percent-unreadable"],
  ["a share", percentField(), "-1", "! percent-unreadable"],
  ["a ratio", ratioField(), "0", "! ratio-unreadable"],
  ["a colour", colourField(), "#EFE3C8", "#efe3c8"],
  ["a colour", colourField(), "#abc", "#aabbcc"],
  ["a colour", colourField(), "cream", "! colour-unreadable"],
  ["a word", HEADING, "Pinch pleat", "pinch-pleat"],
  ["a word", HEADING, "pinch", "pinch-pleat"],
  ["a word of the other vocabulary", HEADING, "grommets", "eyelet"],
  ["a word of the other vocabulary", HEADING, "rod pocket", "slot"],
  ["a word", HEADING, "plaeted", "! word-unknown"],
  ["a name", REF, " fern-trellis ", "fern-trellis"],
  ["a name with an accent stored apart", REF, "cafe\u0301", "caf\u00e9"],
  ["a name with an apostrophe", REF, "aunt's rug", "aunt's rug"],
  ["a path", REF, "../fern", "! name-unreadable"],
  ["a path", REF, "a/b", "! name-unreadable"],
  ["a query", REF, "a?b", "! name-unreadable"],
  ["a picture", pictureField(), "Fern 1.JPG", "Fern 1.JPG"],
  ["a picture", pictureField(), "../a.jpg", "! picture-name"],
  ["a picture", pictureField(), ".hidden.jpg", "! picture-name"],
  ["a drawing", pictureField(), "a.svg", "! picture-name"],
  ["a currency", currencyField(), "usd", "USD"],
  ["a currency", currencyField(), "XQQ", "! currency-unknown"],
  ["a sum", amountField(), "1,200.50", { decimal: "1200.50", mark: null }],
  ["a sum", amountField(), "$ 1,200", { decimal: "1200", mark: "$" }],
  ["a sum", amountField(), "1200 EUR", { decimal: "1200", mark: "EUR" }],
  ["a sum", amountField(), "46,50", { decimal: "46.50", mark: null }],
  ["a sum", amountField(), "€ 1200,50", { decimal: "1200.50", mark: "€" }],
  ["a sum", amountField(), "1.200,50", "! amount-unreadable"],
  ["a sum", amountField(), "1,2000", "! amount-unreadable"],
  ["a sum", amountField(), "-3", "! amount-negative"],
  ["a rate", rateField(), "48 per width", { decimal: "48", mark: null, per: "width" }],
  [
    "a rate",
    rateField(),
    "$2.50 a square meter",
    { decimal: "2.50", mark: "$", per: "square-metre" },
  ],
  ["a rate", rateField(), "9 per m²", { decimal: "9", mark: null, per: "square-metre" }],
  ["a rate", rateField(), "£9 per sq. m", { decimal: "9", mark: "£", per: "square-metre" }],
  ["a rate", rateField(), "1.20 per sq ft", { decimal: "1.20", mark: null, per: "square-foot" }],
  ["a rate", rateField(), "12 per linear metre", { decimal: "12", mark: null, per: "metre" }],
  ["a rate", rateField(), "60 an hour", { decimal: "60", mark: null, per: "hour" }],
  ["a rate", rateField(), "48", { decimal: "48", mark: null, per: "item", bare: true }],
  ["a rate", rateField(), "32 each", { decimal: "32", mark: null, per: "item" }],
  ["a rate", rateField(), "48 per ell", "! rate-unit-unknown"],
  ["a rate", rateField(), "much", "! rate-unreadable"],
  ["a length", positiveLengthField(), '0"', "! length-zero"],
  ["a size", sizeField(2), '20" x 20"', [508, 508]],
  ["a size", sizeField(2), '20"×20"', [508, 508]],
  ["a size", sizeField(2), "50 cm by 1 m", [500, 1000]],
  ["a size", sizeField(3), `31" x 34" x 36"`, [787.4, 863.6, 914.4]],
  ["a size", sizeField(2), `6' 6" x 8'`, [1981.2, 2438.4]],
  ["a size", sizeField(2), "20 x 20", "! length-without-unit"],
  ["a size", sizeField(2), '20" x 0"', "! length-zero"],
  ["a size", sizeField(3), '20" x 20"', "! size-parts"],
  ["a point", pointField(), "0 x 6'", [0, 1828.8]],
  ["a point", pointField(), "9'", "! point-unreadable"],
  ["a maker's work", workField(["curtains", "cushion"]), "Draperies", "curtains"],
  ["a maker's work", workField(["curtains", "cushion"]), "pillows", "cushion"],
  ["a maker's work", workField(["curtains"]), "hanging", "hanging"],
  ["a maker's work", workField(["curtains"]), "bedspreads", "bedspreads"],
  ["a maker's work", workField(["curtains"]), "curtians", "! work-unknown"],
])("%s: %#", (_, field, text, value) => {
  expect(made(field, text)).toEqual(value);
});

test("a closing that cannot be is told in plain words, with what would do", () => {
  const told = (text: string) => {
    const [issue] = closedField().safeParse(text).error?.issues ?? [];
    const fault = issue ? faultOf(issue) : null;
    return `${fault?.message} ${fault?.hint}`;
  };
  expect(told("2027-02-31")).toBe(
    "“2027-02-31” is not a date: February 2027 has 28 days. Write the year, the month and the day: 2026-03-04 is the fourth of March 2026.",
  );
  expect(told("2027-08-20 to 2027-08-02")).toBe(
    "It ends on 2027-08-02, before it begins on 2027-08-20. Write the first day first. Is the year right? For example 2027-08-02 to 2027-08-20.",
  );
  // 24 December to 31 December of the next year: a year and eight days.
  expect(told("2026-12-24 to 2027-12-31")).toContain(
    "it is 373 days: nobody is closed for so long",
  );
  expect(told("25/12/2026")).toContain("Write the year first: 2026-12-25.");
});

test("shares and ratios are exact", () => {
  expect(percentField().parse("8.25 %").toFraction()).toBe("33/400");
  expect(percentField().parse("8,25").toFraction()).toBe("33/400");
  expect(ratioField().parse("2.1").toFraction()).toBe("21/10");
});

test("no word is in two groups of the vocabulary, and each is written as keys are", () => {
  const words = VOCABULARY.flat();
  expect(new Set(words).size).toBe(words.length);
  for (const word of words) expect(word).toMatch(/^[a-z]+(-[a-z]+)*$/);
});
