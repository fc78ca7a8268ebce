import { expect, test } from "vitest";
import type { z } from "zod";
import { acuityField } from "../../src/fields/acuityField.ts";
import { fullnessField, markupFactorField } from "../../src/fields/factorFields.ts";
import { faultOf } from "../../src/fields/fault.ts";
import { lossField, percentField } from "../../src/fields/plainFields.ts";
import { ITEM_KINDS } from "../../src/items/kinds.ts";
import { allowancesSchema } from "../../src/records/allowancesSchema.ts";

/** What a field reads, as a decimal; or what it says instead. */
function told(field: z.ZodType, text: string): string {
  const read = field.safeParse(text);
  if (read.success) return String(read.data);
  const [fault] = read.error.issues.map((issue) => faultOf(issue));
  return `${fault?.code}: ${fault?.message} -> ${fault?.hint}`;
}

// Rates of tax run from nothing to 27 % (Council Directive 2006/112/EC sets 15 % as the least standard rate of VAT, article 97).
test("a share below one without its sign is asked about: a fifth of the tax would be lost a hundredfold", () => {
  expect(told(percentField(), "0.2")).toBe(
    "percent-or-part: “0.2” can be read in two ways: as 20 %, or as 0.2 %. -> Write 20 % or 0.2 %.",
  );
  expect(told(percentField(), "0,075")).toContain("Write 7.5 % or 0.075 %.");
  expect(told(lossField(), "0.04")).toContain("Write 4 % or 0.04 %.");
  expect(told(percentField(), "0.2 %")).toBe("0.002");
  expect(told(percentField(), "0")).toBe("0");
  expect(told(percentField(), "1")).toBe("0.01");
  expect(told(percentField(), "20")).toBe("0.2");
});

test("a markup that is written as a share is told how it is written", () => {
  expect(told(markupFactorField(), "80")).toBe(
    "markup-unlikely: A markup of 80 sells for 80 times what was paid: trade prices are multiplied by it. -> For 80 % on top write 1.8.",
  );
  expect(told(markupFactorField(), "0.8")).toContain("-> For 80 % on top write 1.8.");
  expect(told(markupFactorField(), "80 %")).toBe(
    "factor-as-share: “80 %” is a share, and a number to multiply by is wanted here. -> For 80 % on top write 1.8.",
  );
  expect(told(markupFactorField(), "1")).toBe("1");
  expect(told(markupFactorField(), "2,2")).toBe("2.2");
});

// From 1.5, ring-topped, to 3, sheers, as how-to articles on curtains give them; five leaves room (common practice, no source).
test("a fullness that lost its point is asked about, and so is one that does not cover", () => {
  expect(told(fullnessField(), "25")).toBe(
    "fullness-unlikely: A fullness of 25 is 25 times as much cloth as what it covers. -> Did you mean 2.5?",
  );
  expect(told(fullnessField(), "250 %")).toContain("-> Without the sign write 2.5.");
  expect(told(fullnessField(), "plenty")).toContain("ratio-unreadable");
  expect(told(fullnessField(), "250")).not.toContain("Did you mean");
  expect(told(fullnessField(), "0.5")).toContain("does not reach across");
  expect(told(fullnessField(), "0.9")).toContain("does not reach across");
  expect(told(fullnessField(), "1")).toBe("1");
  expect(told(fullnessField(), "3.5")).toBe("3.5");
});

test("a studio's own fullness is asked about as an item's is, and how returns are counted is not", () => {
  const studio = allowancesSchema(ITEM_KINDS);
  const says = (kind: string, name: string, text: string) =>
    told(studio, { [kind]: { [name]: text } } as never);
  expect(says("curtains", "fullness-pencil-pleat", "25")).toContain("Did you mean 2.5?");
  expect(says("bed-skirt", "pleat-fullness", "30")).toContain("Did you mean 3?");
  expect(says("curtains", "returns-in-fullness", "0")).not.toContain("fullness-unlikely");
  expect(says("cushion", "bias-extra", "1.1")).not.toContain("unlikely");
});

// Snellen's fraction is decimal acuity divided out (ISO 8596; 20 feet are 6 metres).
test("acuity is read as an eye test gives it", () => {
  for (const text of ["0.8", "0,8", "20/25", "6/7.5", "6 / 7.5"])
    expect(told(acuityField(), text)).toBe("0.8");
  expect(told(acuityField(), "20/20")).toBe("1");
  expect(told(acuityField(), "20/200")).toBe(
    "acuity-unreadable: “20/200” is no acuity of an eye that chooses cloth: a good eye has 1. -> Write what an eye test gives, as a number or as its fraction: 0.8, 20/25 and 6/7.5 are the same.",
  );
  for (const text of ["", "0", "80 %", "good", "20/0", "20/25/30", "-1", "80"])
    expect(told(acuityField(), text)).toMatch(/^acuity-unreadable/);
});
