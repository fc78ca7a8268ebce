import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { afterAll, beforeEach, expect, test } from "vitest";
import type { Page } from "../../src/documents/page.ts";
import { renderSite } from "../../src/site/renderSite.ts";

const base = mkdtempSync(join(tmpdir(), "roomcloth-site-"));
let home = "";
let count = 0;
beforeEach(() => {
  count += 1;
  home = join(base, `a studio’s “own” (${count}) & [more]`);
});
afterAll(() => rmSync(base, { recursive: true, force: true }));

function put(path: string, text: string): void {
  const target = join(home, path);
  mkdirSync(dirname(target), { recursive: true });
  writeFileSync(target, text);
}
const get = (path: string, out = "out"): string => readFileSync(join(home, out, path), "utf8");
const files = (out = "out"): string[] =>
  readdirSync(join(home, out), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name).slice(join(home, out).length + 1))
    .sort();

function page(path: string, room: string | null, model: Page["model"]): Page {
  const project = room?.split("/")[0] ?? null;
  const shared = {
    title: "Title",
    language: "en-US",
    paper: "a4",
    pdf: false,
    pictures: [],
  } as const;
  return { reader: "client", project, room, path, model, ...shared };
}
const run = (pages: readonly Page[], out = "out") =>
  renderSite({
    contentDir: join(home, "content"),
    layoutsDir: join(home, "layouts"),
    stagingDir: join(home, out),
    pages,
  });

test("one room file gives several documents in several trees, others come from no room", async () => {
  put(
    "layouts/documents/board.njk",
    `<p>{{ model.name }} {{ page.title }} {{ page.tree }}</p>{{ body | safe }}`,
  );
  put("layouts/documents/list.njk", `{% for item in model.items %}{{ item }},{% endfor %}`);
  put("content/projects/quay/dining-room.md", "---\nroom: Dining room\n---\nFor *you*.\n");
  const result = await run([
    page("client/quay/dining-room/index.html", "quay/dining-room", {
      kind: "board",
      name: "Board",
    }),
    page("makers/workroom/quay/dining-room.html", "quay/dining-room", {
      kind: "board",
      name: "Sheet",
    }),
    page("studio/index.html", null, { kind: "list", items: ["a", "b"] }),
  ]);
  expect(result.diagnostics).toEqual([]);
  expect(result.value?.written).toEqual(files());
  expect(get("client/quay/dining-room/index.html")).toBe(
    "<p>Board Title ../</p><p>For <em>you</em>.</p>\n",
  );
  expect(get("makers/workroom/quay/dining-room.html")).toContain("<p>Sheet Title ./</p>");
  expect(get("studio/index.html")).toBe("a,b,");
});

test("what a user wrote stays text: tags, braces, scripts, and front matter of any language", async () => {
  put("layouts/documents/board.njk", `{{ model.name }}|{{ body | safe }}`);
  const body =
    "{{ 1 + 1 }} {% x %} <script>alert(1)</script> <b>b</b> 8' 9\" ![p](x.jpg) [j](javascript:x)\n";
  put(
    "content/projects/quay/den.md",
    `---js\n{ room: (globalThis.ranHere = true, "Den") }\n---\n${body}`,
  );
  put(
    "content/projects/quay/hall.md",
    "\uFEFF--- yaml  \r\nroom: Hall\r\npermalink: /stolen.html\r\nlayout: x\r\n--- \r\nHello\r\n",
  );
  const result = await run([
    page("client/quay/den.html", "quay/den", { kind: "board", name: '<i>&"' }),
    page("client/quay/hall.html", "quay/hall", { kind: "board", name: "{{ model.kind }}" }),
  ]);
  expect(result.diagnostics).toEqual([]);
  expect(files()).toEqual(["client/quay/den.html", "client/quay/hall.html"]);
  const den = get("client/quay/den.html");
  expect(den).toContain("&lt;i&gt;&amp;&quot;|");
  expect(den).toContain("{{ 1 + 1 }} {% x %} &lt;script&gt;");
  expect(den).toContain("8' 9&quot;");
  expect(den).not.toMatch(/<(?:script|b|img|a)\b/);
  expect(den).toContain("9&quot; p [j](javascript:x)");
  expect("ranHere" in globalThis).toBe(false);
  expect(get("client/quay/hall.html")).toBe("{{ model.kind }}|<p>Hello</p>\n");
});

test("other files of the content folder cannot disturb the build, nor run", async () => {
  put("layouts/documents/board.njk", "{{ model.name }}");
  put("content/projects/quay/den.md", "---\nroom: Den\n---\n");
  put("content/projects/quay/broken.md", "---gibberish\n: : [\n---\n");
  put("content/projects/quay/quay.11tydata.js", "throw new Error('ran')");
  put("content/_data/x.js", "throw new Error('ran')");
  put("content/.eleventy.js", "throw new Error('ran')");
  put("content/.gitignore", "projects/\n");
  put("content/index.njk", "{{ nothing.at.all }}");
  put("content/README.md", "# No page\n");
  const result = await run([
    page("client/quay/den.html", "quay/den", { kind: "board", name: "Den" }),
  ]);
  expect(result.diagnostics).toEqual([]);
  expect(files()).toEqual(["client/quay/den.html"]);
});

test("two builds in one process each see the files as they are, layouts and rooms", async () => {
  const pages = [page("client/quay/den.html", "quay/den", { kind: "board", name: "Den" })];
  put("layouts/documents/board.njk", `one {% include "part.njk" %} {{ body | safe }}`);
  put("layouts/part.njk", "part one");
  put("content/projects/quay/den.md", "---\nroom: Den\n---\nfirst\n");
  await run(pages);
  put("layouts/documents/board.njk", `two {% include "part.njk" %} {{ body | safe }}`);
  put("layouts/part.njk", "part two");
  put("content/projects/quay/den.md", "---\nroom: Den\n---\nsecond\n");
  await run(pages, "out2");
  expect(get("client/quay/den.html")).toBe("one part one <p>first</p>\n");
  expect(get("client/quay/den.html", "out2")).toBe("two part two <p>second</p>\n");
});

test("builds that are started together do not mix, and the current folder is as before", async () => {
  const before = process.cwd();
  put("layouts/documents/board.njk", `{{ model.name }}`);
  put("content/projects/quay/den.md", "---\nroom: Den\n---\n");
  const make = (name: string) =>
    run([page(`client/quay/${name}.html`, "quay/den", { kind: "board", name })], name);
  const results = await Promise.all(["a", "b", "c"].map(make));
  expect(results.flatMap((one) => one.value?.written)).toEqual(
    ["a", "b", "c"].map((name) => `client/quay/${name}.html`),
  );
  for (const name of ["a", "b", "c"]) expect(get(`client/quay/${name}.html`, name)).toBe(name);
  expect(process.cwd()).toBe(before);
});

test("every faulty layout is reported with its file, line and page, and the other pages are written", async () => {
  put("layouts/documents/undefined.njk", "<p>\n{{ model.kind }}\n{{ model.nmae }}</p>");
  put("layouts/documents/null.njk", "{{ model.note }}");
  put("layouts/documents/iffy.njk", "x{% if model.notForCuting %}NOT FOR CUTTING{% endif %}");
  put("layouts/documents/deep.njk", `{% include "part.njk" %}`);
  put("layouts/part.njk", "{{ model.list[0].nothing }}");
  put("layouts/documents/syntax.njk", "{% if %}");
  put("layouts/documents/unsafe.njk", "{{ model.name | safe }}");
  put(
    "layouts/documents/good.njk",
    `{{ model.svg | safe }}{% if "more" in model %}x{% endif %}{{ model.list | length }}`,
  );
  const model = { note: null, name: "<b>", list: [{ a: 1 }], svg: { html: "<svg/>" } };
  const kinds = ["undefined", "null", "iffy", "deep", "syntax", "unsafe", "missing", "good"];
  const result = await run(
    kinds.map((kind) => page(`client/quay/${kind}.html`, null, { kind, ...model })),
  );
  expect(files()).toEqual(["client/quay/good.html"]);
  expect(get("client/quay/good.html")).toBe("<svg/>1");
  expect(result.value?.failed).toHaveLength(7);
  const of = (kind: string) =>
    result.diagnostics.find((one) => one.actual === `client/quay/${kind}.html`);
  expect(of("undefined")).toMatchObject({
    code: "layout",
    file: "layouts/documents/undefined.njk",
  });
  expect(of("undefined")?.message).toContain('model has no "nmae"');
  expect(of("iffy")?.message).toContain('model has no "notForCuting"');
  expect(of("null")?.message).toContain("null or undefined");
  expect(of("deep")?.message).toContain('model.list[0] has no "nothing"');
  expect(of("syntax")?.line).toBe(1);
  expect(of("unsafe")?.message).toContain("{ html }");
  expect(of("missing")?.message).toContain("documents/missing.njk");
});

test("paths that would leave the output, or meet, are refused as mistakes of ours", async () => {
  put("layouts/documents/board.njk", "x");
  const at = (...paths: string[]) => run(paths.map((path) => page(path, null, { kind: "board" })));
  for (const path of [
    "../x.html",
    "/x.html",
    "a/../b.html",
    "a\\b.html",
    "C:/x.html",
    ".git/x.html",
  ]) {
    await expect(at(path)).rejects.toThrow("not a page's path");
  }
  await expect(at("a/x.html", "a/X.html")).rejects.toThrow("two pages");
});

test("a room whose file has gone still gives its pages, without a body", async () => {
  put("layouts/documents/board.njk", "[{{ body | safe }}]");
  const result = await run([page("client/quay/den.html", "quay/den", { kind: "board" })]);
  expect(result.diagnostics).toEqual([]);
  expect(get("client/quay/den.html")).toBe("[]");
});

test("no pages at all is an empty folder", async () => {
  const result = await run([]);
  expect(result).toEqual({ value: { written: [], failed: [] }, diagnostics: [] });
  expect(files()).toEqual([]);
});
