import { readdir, readFile } from "node:fs/promises";
import { createRequire } from "node:module";
import { dirname, join } from "node:path";
import type { Page } from "../documents/page.ts";
import type { OutputFile } from "./computed.ts";
import { handoverRoot } from "./treeOf.ts";

/** Folder below a tree's root that holds what all its pages share; no project can have this name. */
export const ASSETS = "assets";

/** The script that searches the studio's index, and the library that it is made with. */
const SEARCH = "search.js";
const MINISEARCH = {
  name: "minisearch.js",
  copyOf: join(dirname(createRequire(import.meta.url).resolve("minisearch")), "../umd/index.js"),
};

const SUBSETS = "arabic|cyrillic-ext|cyrillic|greek-ext|greek|hebrew|latin-ext|latin|vietnamese";

/**
 * The style sheets of the layouts, the fonts that they name and the scripts, once for each tree that is handed over,
 * so that each tree is complete in itself. Fonts come from the `@fontsource` packages: the sheet
 * names `fonts/<family>-<subset>-<weight>-<style>.woff2`. Throws for a font that no package has.
 */
export async function treeAssets(
  pages: readonly Page[],
  layoutsDir: string,
): Promise<readonly OutputFile[]> {
  const owners = new Map(pages.map((page) => [handoverRoot(page.path), page] as const));
  const all = await scripts(join(layoutsDir, "js"));
  const shared = [
    ...(await sharedFiles(join(layoutsDir, "css"))),
    ...all.filter(({ name }) => name !== SEARCH),
  ];
  // No one else's tree has an index to search.
  const search = all.filter(({ name }) => name === SEARCH);
  const ofStudio = search.length > 0 ? [...search, MINISEARCH] : [];
  return [...owners]
    .filter(([root]) => root !== "")
    .flatMap(([root, { reader, project }]) =>
      [...shared, ...(reader === "studio" ? ofStudio : [])].map(({ name, copyOf }) => ({
        path: `${root}/${ASSETS}/${name}`,
        project: reader === "studio" ? null : project,
        room: null,
        content: { copyOf },
      })),
    );
}

interface SharedFile {
  readonly name: string;
  readonly copyOf: string;
}

async function sharedFiles(folder: string): Promise<readonly SharedFile[]> {
  const names = (await readdir(folder).catch(() => [] as string[])).sort();
  const sheets = names
    .filter((name) => name.endsWith(".css"))
    .map((name) => ({ name, copyOf: join(folder, name) }));
  const fonts = new Map<string, string>();
  for (const { copyOf } of sheets) {
    const text = await readFile(copyOf, "utf8");
    for (const [, font = ""] of text.matchAll(/url\(\s*["']?fonts\/([\w-]+\.woff2)["']?\s*\)/g)) {
      if (!fonts.has(font)) fonts.set(font, fontFile(font));
    }
  }
  return [...sheets, ...[...fonts].map(([font, copyOf]) => ({ name: `fonts/${font}`, copyOf }))];
}

/** The scripts of the layouts: few and small, since every page can be read without. */
async function scripts(folder: string): Promise<readonly SharedFile[]> {
  const names = (await readdir(folder).catch(() => [] as string[])).sort();
  return names
    .filter((name) => name.endsWith(".js"))
    .map((name) => ({ name, copyOf: join(folder, name) }));
}

function fontFile(name: string): string {
  const family = new RegExp(`^(.+?)-(?:${SUBSETS})-\\d`).exec(name)?.[1];
  if (family === undefined) throw new Error(`the font ${name} is not named as fonts are`);
  const main = createRequire(import.meta.url).resolve(`@fontsource/${family}/package.json`);
  return join(dirname(main), "files", name);
}
