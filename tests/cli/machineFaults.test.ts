import { existsSync } from "node:fs";
import { join } from "node:path";
import { afterEach, beforeEach, expect, test } from "vitest";
import { openOutput } from "../../src/cli/output/outputFolder.ts";
import { diagnostic } from "../../src/diagnostics/diagnostic.ts";
import { EVERYTHING, QUICK, threeRooms } from "./threeRooms.ts";

// What the machine refuses: a browser, a disk, a picture, a page, the output folder.

let studio: ReturnType<typeof threeRooms>;
beforeEach(() => {
  studio = threeRooms("faults");
});
afterEach(() => studio.remove());

const NOWHERE = { file: "", line: null, column: null, keyPath: null };

test("without a browser all pages are built without PDFs, and status 3 says what is missing", async () => {
  await studio.run(QUICK);
  studio.room("quay/den", "second");
  const findBrowser = async () => ({
    value: null,
    diagnostics: [diagnostic(NOWHERE, "no-browser", "There is no browser.")],
  });
  const said = await studio.run(["build", "--json"], { findBrowser });
  expect(said.exit).toBe(3);
  expect(JSON.parse(said.out).diagnostics[0].code).toBe("no-browser");
  expect(JSON.parse(said.out).diagnostics[0].hint).toContain("`--no-pdf`");
  expect(JSON.parse(said.out).built).toContain("quay");
  expect(studio.made()).toMatchObject({ "client/quay/den/index.html": "second" });
  expect(Object.keys(studio.made()).filter((path) => path.endsWith(".pdf"))).toEqual([]);
  expect((await studio.run(QUICK, { findBrowser })).exit).toBe(0);
});

test.each(["ENOSPC", "EACCES"])(
  "a disk that refuses (%s) while building leaves the old trees, with status 3",
  async (code) => {
    await studio.run(QUICK);
    studio.room("quay/den", "second");
    const makePictures = async () => {
      throw Object.assign(new Error(`${code}: refused`), { code, syscall: "write", path: "x" });
    };
    const said = await studio.run(QUICK, { makePictures });
    expect(said.exit).toBe(3);
    expect(said.err).not.toMatch(/^ +at /m);
    expect(studio.made()).toEqual(EVERYTHING);
    expect(existsSync(join(studio.out, ".roomcloth/lock.json"))).toBe(false);
  },
);

test("a picture that cannot be made keeps its project", async () => {
  await studio.run(QUICK);
  const picture = {
    path: "client/quay/pictures/a.jpg",
    source: "a.jpg",
    crop: null,
    widthPx: 1,
    tile: null,
    grey: false,
  };
  const compute: typeof studio.wiring.compute = async (contentDir, options) => {
    const computed = await studio.wiring.compute(contentDir, options);
    const withPicture = (project: string | null) => (project === "quay" ? [picture] : []);
    return {
      ...computed,
      pages: computed.pages.map((page) => ({ ...page, pictures: withPicture(page.project) })),
    };
  };
  const makePictures = async () => ({
    value: { failed: [picture.path] },
    diagnostics: [
      diagnostic({ ...NOWHERE, file: "cloths/a.md" }, "photo", "The photograph is damaged."),
    ],
  });
  studio.room("quay/den", "second");
  studio.room("mill/attic", "second");
  expect((await studio.run(QUICK, { compute, makePictures })).exit).toBe(1);
  expect(studio.made()["client/quay/den/index.html"]).toBe("first");
  expect(studio.made()["client/mill/attic/index.html"]).toBe("second");
});

test("a page that cannot be printed keeps its project and is named", async () => {
  await studio.run(["build"]);
  studio.room("mill/attic", "second");
  studio.room("quay/den", "second");
  studio.put(
    "layouts/documents/board.njk",
    `<!doctype html><html lang="en"><body><h1>x</h1>{{ body | safe }}{% if model.name == "quay/den" %}<img src="lost.jpg" alt="">{% endif %}</body></html>`,
  );
  const said = await studio.run(["build"]);
  expect(said.exit).toBe(1);
  expect(said.err).toContain(
    "client/quay/den/index.html  error: The file client/quay/den/lost.jpg",
  );
  expect(studio.made()["client/quay/den/index.html"]).toBe("first");
  expect(studio.made()["client/mill/attic/index.html"]).toBe("second");
});

test("while another build has the output folder, status 3", async () => {
  const other = openOutput(studio.out);
  const said = await studio.run(QUICK);
  other.value?.close();
  expect(said.exit).toBe(3);
  expect(said.err).toContain("Another build is writing");
});
