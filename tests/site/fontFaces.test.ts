import { existsSync, readFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { expect, test } from "vitest";
import { facesFor } from "../../src/site/fontFaces.ts";

const ROOT = resolve(import.meta.dirname, "../..");
const CSS = readFileSync(join(ROOT, "layouts/css/faces.css"), "utf8");

test("a page takes the faces of the letters that it has, and no others", () => {
  const latin = facesFor(CSS, "Room");
  expect(latin).toContain("eb-garamond-latin-400-normal");
  expect(latin).not.toMatch(/hebrew|arabic|greek|cyrillic|vietnamese|latin-ext/);
  expect(facesFor(CSS, "בית")).toMatch(/hebrew/);
  expect(facesFor(CSS, "دار")).toMatch(/arabic/);
  expect(facesFor(CSS, "Łódź")).toMatch(/latin-ext/);
  expect(facesFor(CSS, "Щ")).not.toMatch(/greek/);
  expect(facesFor("p{color:red}", "")).toBe("p{color:red}");
});

test("every face is a static file of a package that is installed, under the Open Font License", () => {
  const names = [...CSS.matchAll(/fonts\/([\w-]+\.woff2)/g)].map((m) => m[1] as string);
  expect(names.length).toBeGreaterThan(40);
  for (const name of names) {
    const family = /^(.+?)-(?:arabic|cyrillic|greek|hebrew|latin|vietnamese)[\w-]*-\d/.exec(
      name,
    )?.[1];
    const found = [family, `${family}-hebrew`, `${family}-arabic`]
      .map((f) => join(ROOT, "node_modules/@fontsource", f ?? ""))
      .find((folder) => existsSync(join(folder, "files", name)));
    expect(found, name).toBeDefined();
    expect(readFileSync(join(found as string, "LICENSE"), "utf8"), name).toContain(
      "SIL Open Font License",
    );
  }
});
