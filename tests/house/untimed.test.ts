import { readdirSync, readFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { expect, test } from "vitest";

// Decided by the project: speed is measured by the benches, as ratios in one run; a test that watches a clock fails on a busy machine.
const TESTS = resolve(import.meta.dirname, "..");

test("no test watches the clock", () => {
  const files = readdirSync(TESTS, { recursive: true, encoding: "utf8" });
  const own = files.filter((f) => f.endsWith(".test.ts") && !f.endsWith("untimed.test.ts"));
  expect(own.length).toBeGreaterThan(200);
  const watching = own.filter((f) =>
    /performance\.now|hrtime|console\.time\b/.test(readFileSync(join(TESTS, f), "utf8")),
  );
  expect(watching).toEqual([]);
});
