import { readdirSync, readFileSync } from "node:fs";
import { dirname, join, posix, relative, resolve } from "node:path";
import { expect, test } from "vitest";

// The table of DEVELOPERS.md, "The house": who may import whom. Decided by the project; no outside source.
const SRC = resolve(import.meta.dirname, "../../src");

const BASE = ["units", "diagnostics"];
const ITEMS = ["items", "cutplan/piece.ts", "drawing", "fields"];
const RECORDS = ["records", "fields"];
const ROOM = ["room", "items"];
const MAY: Readonly<Record<string, readonly string[]>> = {
  diagnostics: [],
  units: ["diagnostics"],
  colour: [],
  fields: [...BASE, "colour"],
  cloth: ["colour", ...BASE],
  cutplan: ["units"],
  drawing: ["units"],
  items: [...BASE, ...ITEMS],
  records: [...BASE, "fields"],
  room: [...BASE, ...RECORDS, "items"],
  swatches: [...BASE, ...RECORDS, "cloth", "colour", "items/itemKind.ts"],
  scheme: [...BASE, ...RECORDS, "room", "swatches", "colour"],
  quantities: [...BASE, ...RECORDS, ...ROOM, "cutplan", "swatches"],
  money: [...BASE, ...RECORDS, "quantities", "items/itemKind.ts"],
  sourcing: [...BASE, ...RECORDS, "quantities"],
  revisions: [...BASE, ...RECORDS, "quantities", "money", "items/itemName.ts"],
  documents: [
    ...BASE,
    ...RECORDS,
    ...ROOM,
    "colour",
    "drawing",
    "swatches",
    "scheme",
    "quantities",
    "money",
    "sourcing",
    "revisions",
  ],
  archive: [
    ...BASE,
    ...RECORDS,
    "colour",
    "swatches",
    "quantities",
    "money",
    "revisions",
    "documents",
  ],
};
/** The edges may import everything and touch files, clock, pictures and browser. */
const EDGES = new Set(["images", "site", "press", "cli"]);

const files = readdirSync(SRC, { recursive: true, encoding: "utf8" })
  .map((name) => name.split("\\").join("/"))
  .filter((name) => name.endsWith(".ts") && !name.endsWith(".d.ts"))
  .sort();

interface Import {
  readonly from: string;
  readonly line: number;
  /** Path below src/ for our own files, else the package's name. */
  readonly to: string;
  readonly own: boolean;
}

const IMPORT =
  /^\s*(?:import|export)\b[^"';]*?from\s+"([^"]+)"|^\s*import\s+"([^"]+)"|\bimport\(\s*"([^"]+)"\s*\)/gm;

function importsOf(file: string): Import[] {
  const text = readFileSync(join(SRC, file), "utf8");
  return [...text.matchAll(IMPORT)].map((found) => {
    const name = (found[1] ?? found[2] ?? found[3]) as string;
    const line =
      text.slice(0, found.index).split("\n").length + (found[0].match(/^\n*/)?.[0].length ?? 0);
    const own = name.startsWith(".");
    return {
      from: file,
      line,
      own,
      to: own ? posix.normalize(posix.join(dirname(file), name)) : name,
    };
  });
}

const all = files.flatMap(importsOf);
const folderOf = (file: string): string => file.split("/")[0] as string;
const at = ({ from, line, to }: Import): string => `src/${from}:${line} imports ${to}`;

test("every folder of src is in the table or an edge", () => {
  const folders = new Set(files.map(folderOf));
  for (const folder of folders)
    expect(Object.hasOwn(MAY, folder) || EDGES.has(folder), folder).toBe(true);
});

test("no file imports from a folder that the table does not give it", () => {
  const wrong = all.filter(({ from, to, own }) => {
    const folder = folderOf(from);
    if (!own || EDGES.has(folder) || folderOf(to) === folder) return false;
    return !(MAY[folder] ?? []).some((allowed) => to === allowed || to.startsWith(`${allowed}/`));
  });
  expect(wrong.map(at)).toEqual([]);
});

test("taste must not move a cut length: scheme and quantities never import each other", () => {
  const wrong = all.filter(
    ({ from, to }) =>
      (folderOf(from) === "scheme" && to.startsWith("quantities/")) ||
      (folderOf(from) === "quantities" && to.startsWith("scheme/")),
  );
  expect(wrong.map(at)).toEqual([]);
});

test("only documents look into an item's drawing and sheet, and a kind does not look into another kind", () => {
  const wrong = all.filter(({ from, to, own }) => {
    if (!own || !/^items\/[^/]+\/(?:drawing|sheet|workshop|elevation|plan)\.ts$/.test(to))
      return false;
    return !from.startsWith("items/") && !from.startsWith("documents/");
  });
  expect(wrong.map(at)).toEqual([]);
  const kindOf = (file: string): string | undefined => /^items\/([^/]+)\//.exec(file)?.[1];
  const sideways = all.filter(
    ({ from, to, own }) =>
      own &&
      kindOf(from) &&
      kindOf(to) &&
      kindOf(from) !== kindOf(to) &&
      // What kinds share is everyone's; it knows no kind itself.
      kindOf(to) !== "common",
  );
  expect(sideways.map(at)).toEqual([]);
});

test("no import goes in a circle", () => {
  const graph = new Map(
    files.map((file) => [file, all.filter((i) => i.from === file && i.own).map((i) => i.to)]),
  );
  const done = new Set<string>();
  const circles: string[] = [];
  const walk = (file: string, path: readonly string[]): void => {
    const seen = path.indexOf(file);
    if (seen >= 0) {
      circles.push([...path.slice(seen), file].join(" -> "));
      return;
    }
    if (done.has(file)) return;
    for (const next of graph.get(file) ?? []) walk(next, [...path, file]);
    done.add(file);
  };
  for (const file of files) walk(file, []);
  expect(circles).toEqual([]);
});

test("what is imported from our own files is there, with its ending", () => {
  const known = new Set(files);
  const missing = all.filter(
    ({ to, own }) => own && to.endsWith(".ts") && !known.has(to) && !to.endsWith(".d.ts"),
  );
  expect(missing.map(at)).toEqual([]);
  expect(all.filter(({ own, to }) => own && !/\.(?:ts|json)$/.test(to)).map(at)).toEqual([]);
});

test("no barrels: a file that only hands on other files", () => {
  expect(files.filter((file) => /(?:^|\/)index\.ts$/.test(file))).toEqual([]);
  const handingOn = files.filter((file) =>
    /^export\s+\*\s+from/m.test(readFileSync(join(SRC, file), "utf8")),
  );
  expect(handingOn).toEqual([]);
});

/** What a pure folder must not do; the clock may be asked about a given instant, never for the present one. */
const IMPURE: readonly (readonly [RegExp, string])[] = [
  [
    /\b(?:from|import)[\s(]+"(?:node:[^"]+|fs|fs\/promises|path|os|child_process|crypto|process|worker_threads|https?|net)"/,
    "a module of Node",
  ],
  [/from\s+"(?:sharp|puppeteer|@11ty\/eleventy|commander|picocolors)"/, "a package of the edges"],
  [/\bprocess\.|\bglobalThis\b/, "the process"],
  [/\bDate\.now\b|\bnew Date\b(?!\s*\(\s*[^\s)])/, "the clock"],
  [/\bMath\.random\(/, "chance"],
  [/\bperformance\.now\(/, "the clock"],
  [/\bfetch\(/, "the network"],
  [/\bconsole\./, "the terminal"],
];

test("files, clock, chance, process and browser are left to the edges", () => {
  const wrong = files
    .filter((file) => !EDGES.has(folderOf(file)))
    .flatMap((file) =>
      readFileSync(join(SRC, file), "utf8")
        .split("\n")
        .flatMap((text, index) => {
          if (/^\s*(?:\/\/|\*|\/\*)/.test(text)) return [];
          return IMPURE.filter(([pattern]) => pattern.test(text)).map(
            ([, what]) => `src/${file}:${index + 1} uses ${what}`,
          );
        }),
    );
  expect(wrong).toEqual([]);
});

test("the top level holds what the project allows, and no more", () => {
  const root = resolve(SRC, "..");
  const allowed = new Set([
    "README.md",
    "DEVELOPERS.md",
    "package.json",
    "package-lock.json",
    "tsconfig.json",
    "LICENSE",
    "content",
    "content-archive",
    "layouts",
    "src",
    "tests",
    "node_modules",
    "out",
  ]);
  const extra = readdirSync(root).filter((name) => !allowed.has(name) && !name.startsWith("."));
  expect(extra).toEqual([]);
  expect(relative(root, SRC)).toBe("src");
});

test("layouts only present: no arithmetic and no rounding", () => {
  const layouts = resolve(SRC, "../layouts");
  const wrong = readdirSync(layouts, { recursive: true, encoding: "utf8" })
    .filter((name) => name.endsWith(".njk"))
    .flatMap((name) =>
      readFileSync(join(layouts, name), "utf8")
        .split("\n")
        .flatMap((text, index) =>
          /\{\{[^}]*(?:[-+*/]\s*\d|\d\s*[-+*/])[^}]*\}\}|\|\s*round/.test(text)
            ? [`layouts/${name}:${index + 1}`]
            : [],
        ),
    );
  expect(wrong).toEqual([]);
});
