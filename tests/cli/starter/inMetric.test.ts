import { mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, expect, test } from "vitest";
import { inMetric } from "../../../src/cli/starter/inMetric.ts";
import { starter } from "../../../src/cli/starter/starter.ts";
import { ITEM_KINDS } from "../../../src/items/kinds.ts";
import { readRecords } from "../../../src/records/readRecords.ts";
import { triedOut } from "./tryOut.ts";

// Starting files of a studio in centimetres. An inch is 2.54 cm and a yard 0.9144 m exactly (international yard and pound agreement, 1959).

const STUDIO =
  "---\nstudio: Atelier\nlanguage: en-GB\nunits: cm\ncurrency: EUR\npaper: a3\nmakers: { workroom: { name: Ott, makes: [curtains] } }\n---\n";
let contentDir = "";
beforeAll(async () => {
  contentDir = await mkdtemp(join(tmpdir(), "roomcloth-metric-"));
  await writeFile(join(contentDir, "studio.md"), STUDIO);
});
afterAll(() => rm(contentDir, { recursive: true, force: true }));

const example = (text: string): unknown => inMetric({ examples: [text] }).examples?.[0];

test.each([
  [`8' 9"`, "267 cm"],
  [`84 1/2"`, "215 cm"],
  [`72" x 60"`, "183 cm x 152 cm"],
  [`16' 6" x 12' 4"`, "503 cm x 376 cm"],
  [`1'`, "30 cm"],
  [`5"`, "12.5 cm"],
  [`1/2"`, "1.5 cm"],
  ["1 3/4 yd", "1.6 m"],
  ["12 1/2 yd", "11.4 m"],
  ['[{ window: bay, size: 30" x 40" }]', "[{ window: bay, size: 76 cm x 102 cm }]"],
  ["#efe3c8", "#efe3c8"],
  ["40 60 200 150 at 90%", "40 60 200 150 at 90%"],
  ["2026-03-04", "2026-03-04"],
])("%s is %s", (inches, metric) => {
  expect(example(inches)).toBe(metric);
});

test("an example that is metric already stands first, and cloth is sold by the metre", () => {
  expect(inMetric({ examples: ["375 sq ft/gal", "10 m2/l"] }).examples?.[0]).toBe("10 m2/l");
  expect(inMetric({ words: ["yard", "metre", "roll"] }).words).toEqual(["metre", "yard", "roll"]);
});

test("a room, a project and their examples are in centimetres, and each can be used as it stands", async () => {
  const made = async (kind: "room" | "project"): Promise<string> =>
    (await starter({ kind, title: "Diele", items: null, contentDir })).value ?? "";
  const [room, project] = [await made("room"), await made("project")];
  expect(room).toMatch(/^# height: 267 cm /m);
  // Below the head, which names all ways of writing a length.
  for (const text of [room, project])
    for (const line of text.split("\n").slice(2))
      expect(line.split("  # ")[0]?.replace(/'#\w+'/, "")).not.toMatch(/\d["']| yd\b/);
  const path = "projects/weiher/diele.md";
  let tried = 0;
  for (const one of triedOut(room)) {
    tried++;
    const files = [
      { path: "studio.md", text: STUDIO },
      { path: "projects/weiher/project.md", text: project },
      { path, text: one.file },
    ];
    const { diagnostics } = readRecords({ files, present: [], items: ITEM_KINDS });
    const wrong = diagnostics.filter(
      (d) => d.severity === "error" && /length|size|unit/.test(d.code),
    );
    expect(
      wrong.map((d) => `${d.line}: ${d.message}`),
      one.line,
    ).toEqual([]);
  }
  expect(tried).toBeGreaterThan(15);
});
