import { existsSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, expect, test } from "vitest";
import type { Page } from "../../src/documents/page.ts";
import { treeAssets } from "../../src/site/treeAssets.ts";
import { handoverRoot, switchedTree } from "../../src/site/treeOf.ts";

const layouts = mkdtempSync(join(tmpdir(), "roomcloth-layouts-"));
afterAll(() => rmSync(layouts, { recursive: true, force: true }));

function page(reader: Page["reader"], path: string, project: string | null): Page {
  const rest = {
    room: null,
    title: "",
    language: "en",
    paper: "a4",
    pdf: false,
    pictures: [],
  } as const;
  return { reader, path, project, model: { kind: "x" }, ...rest };
}

test("each tree that is handed over gets the sheets and the fonts that they name", async () => {
  mkdirSync(join(layouts, "css"));
  writeFileSync(
    join(layouts, "css/house.css"),
    `@font-face{src:url("fonts/eb-garamond-latin-ext-400-italic.woff2")}@font-face{src:url(fonts/alegreya-sans-latin-700-normal.woff2)}`,
  );
  const files = await treeAssets(
    [
      page("client", "client/quay/den/index.html", "quay"),
      page("client", "client/quay/index.html", "quay"),
      page("maker", "makers/workroom/quay/den.html", "quay"),
      page("studio", "studio/quay/findings.html", "quay"),
      page("studio", "studio/index.html", null),
    ],
    layouts,
  );
  const roots = ["client/quay", "makers/workroom/quay", "studio"];
  expect(files.map((file) => file.path)).toEqual(
    roots.flatMap((root) => [
      `${root}/assets/house.css`,
      `${root}/assets/fonts/eb-garamond-latin-ext-400-italic.woff2`,
      `${root}/assets/fonts/alegreya-sans-latin-700-normal.woff2`,
    ]),
  );
  expect(files.map((file) => file.project).filter((_, at) => at % 3 === 0)).toEqual([
    "quay",
    "quay",
    null,
  ]);
  for (const { content } of files)
    expect("copyOf" in content && existsSync(content.copyOf)).toBe(true);
});

test("a font that no package has is a mistake of ours", async () => {
  writeFileSync(
    join(layouts, "css/house.css"),
    "@font-face{src:url(fonts/nofont-latin-400-normal.woff2)}",
  );
  await expect(treeAssets([page("client", "client/quay/a.html", "quay")], layouts)).rejects.toThrow(
    "nofont",
  );
});

test.each([
  ["client/quay/den/index.html", "client/quay", "client/quay"],
  ["makers/workroom/quay/den.html", "makers/workroom/quay", "makers/workroom/quay"],
  ["studio/quay/findings.html", "studio/quay", "studio"],
  ["studio/index.html", null, "studio"],
  ["studio/assets/house.css", "studio/assets", "studio"],
  ["makers/workroom/index.html", null, "makers/workroom"],
  ["index.html", null, ""],
])("%s is switched with %s and handed over with %s", (path, switched, handed) => {
  expect(switchedTree(path)).toBe(switched);
  expect(handoverRoot(path)).toBe(handed);
});
