import { readdirSync, readFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { expect, test } from "vitest";

// Decided by the project: speed is measured by the benches, as ratios in one run; a test that watches a clock fails on a busy machine.
const TESTS = resolve(import.meta.dirname, "..");

const files = readdirSync(TESTS, { recursive: true, encoding: "utf8" });
const own = files.filter((f) => f.endsWith(".test.ts") && !f.endsWith("untimed.test.ts"));
const thatHave = (words: RegExp): string[] =>
  own.filter((f) => words.test(readFileSync(join(TESTS, f), "utf8")));

test("no test watches the clock", () => {
  expect(own.length).toBeGreaterThan(200);
  expect(thatHave(/performance\.now|hrtime|console\.time\b/)).toEqual([]);
});

test("no test or hook has a limit of its own: the one against what hangs is in the configuration", () => {
  const limit = /^\s*\}, \w{2,}\);$|^ {2}[\d_]{4,},\n\);|\btimeout: /m;
  for (const own of ["}, 60_000);", "}, LIMIT);", "  },\n  60_000,\n);", "{ timeout: 5000 }"])
    expect(own).toMatch(limit);
  expect(thatHave(limit)).toEqual([]);
});
