import { spawnSync } from "node:child_process";
import {
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join, resolve } from "node:path";
import { afterAll, beforeAll, expect, test } from "vitest";
import { openOutput } from "../../src/cli/output/outputFolder.ts";

/** A checkout in small: its own content and layouts, our plugin, and Eleventy's own command. */
const home = mkdtempSync(join(tmpdir(), "roomcloth-checkout-"));
const ours = resolve(import.meta.dirname, "../..");
afterAll(() => rmSync(home, { recursive: true, force: true }));

function put(path: string, text: string): void {
  mkdirSync(dirname(join(home, path)), { recursive: true });
  writeFileSync(join(home, path), text);
}

beforeAll(() => {
  symlinkSync(join(ours, "node_modules"), join(home, "node_modules"));
  put("package.json", '{ "type": "module" }');
  // As the real one at the top of the repository, with a computation of the test's own.
  put(
    ".eleventy.js",
    `import { register } from "tsx/esm/api";
register();
const { checkoutSite } = await import(${JSON.stringify(join(ours, "src/site/checkoutSite.ts"))});
const page = (path, room, model) => ({ reader: "client", project: "quay", room, path, title: path, language: "en", paper: "a4", pdf: true, pictures: [], model });
const compute = async () => ({
  pages: [page("client/quay/den.html", "quay/den", { kind: "board", name: "Den" }), page("client/quay/index.html", null, { kind: "board", name: "Quay" })],
  files: [], diagnostics: [], projects: ["quay"], brokenProjects: [], studioBroken: false,
});
const makePictures = async () => ({ value: { failed: [] }, diagnostics: [] });
export default function (config) {
  config.addPlugin(checkoutSite, { contentDir: import.meta.dirname + "/content", layoutsDir: import.meta.dirname + "/layouts", compute, makePictures });
  return { dir: { input: "content", output: "out" } };
}
`,
  );
  put("layouts/documents/board.njk", "<h1>{{ model.name }}</h1>{{ body | safe }}");
  put("layouts/css/house.css", 'p { src: url("fonts/eb-garamond-latin-400-normal.woff2") }');
  put("content/studio.md", "---\nstudio: X\n---\n# Not a page\n");
  put("content/README.md", "# Not a page\n");
  put("content/projects/quay/project.md", "---\nproject: Quay\n---\n");
  put(
    "content/projects/quay/den.md",
    "---\nroom: Den\npermalink: /elsewhere.html\n---\nHello {{ x }}\n",
  );
});

const eleventy = () =>
  spawnSync(process.execPath, [join(ours, "node_modules/@11ty/eleventy/cmd.cjs")], {
    cwd: home,
    encoding: "utf8",
  });
const made = (): string[] =>
  readdirSync(join(home, "out"), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name).slice(home.length + 5))
    .filter((path) => !path.startsWith(".roomcloth"))
    .sort();

test("plain Eleventy at the checkout makes the pages with their style sheets and fonts", () => {
  const run = eleventy();
  expect(run.stderr).toBe("");
  expect(run.status).toBe(0);
  expect(made()).toEqual([
    "client/quay/assets/fonts/eb-garamond-latin-400-normal.woff2",
    "client/quay/assets/house.css",
    "client/quay/den.html",
    "client/quay/index.html",
  ]);
  expect(readFileSync(join(home, "out/client/quay/den.html"), "utf8")).toBe(
    "<h1>Den</h1><p>Hello {{ x }}</p>\n",
  );
});

test("what it wrote is known as ours, so that a build may replace it", () => {
  const output = openOutput(join(home, "out"));
  mkdirSync(join(output.value?.staging ?? "", "client/quay"), { recursive: true });
  writeFileSync(join(output.value?.staging ?? "", "client/quay/new.html"), "new");
  const scope = { built: new Set(["quay"]), existing: new Set(["quay"]) };
  const result = output.value?.publish([{ path: "client/quay/new.html", project: "quay" }], scope);
  output.value?.close();
  expect(result?.diagnostics).toEqual([]);
  expect(made()).toEqual(["client/quay/new.html"]);
});

test("an undefined value fails the build and names the layout", () => {
  put("layouts/documents/board.njk", "<h1>{{ model.nmae }}</h1>");
  const run = eleventy();
  expect(run.status).not.toBe(0);
  expect(run.stderr).toContain("layouts/documents/board.njk");
  expect(run.stderr).toContain('model has no "nmae"');
});
