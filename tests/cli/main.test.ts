import { existsSync, mkdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { afterEach, beforeEach, expect, test } from "vitest";
import { EVERYTHING, QUICK, threeRooms } from "./threeRooms.ts";

let studio: ReturnType<typeof threeRooms>;
beforeEach(() => {
  studio = threeRooms("main");
});
afterEach(() => studio.remove());

test("build makes every page and PDF, and says so", async () => {
  const said = await studio.run(["build"]);
  expect(said).toMatchObject({ exit: 0, err: "" });
  expect(said.out).toContain("Built mill, quay in");
  expect(said.out).toContain("3 PDFs, 0 of them unchanged");
  const pdfs = ["client/mill/attic", "client/quay/den", "client/quay/hall"].map((page) => [
    `${page}/index.pdf`,
    "pdf",
  ]);
  expect(studio.made()).toEqual({ ...EVERYTHING, ...Object.fromEntries(pdfs) });
  const pdf = readFileSync(join(studio.out, "client/quay/den/index.pdf"), "latin1");
  expect(pdf).toContain("D:20261002000000+00'00'");
  const again = await studio.run(["build"]);
  expect(again.out).toContain("3 PDFs, 3 of them unchanged");
  expect(readFileSync(join(studio.out, "client/quay/den/index.pdf"), "latin1")).toBe(pdf);
  await studio.run(["build", "--no-cache"], {}, { SOURCE_DATE_EPOCH: "86400" });
  expect(readFileSync(join(studio.out, "client/quay/den/index.pdf"), "latin1")).toContain(
    "D:19700102000000+00'00'",
  );
});

test("--json is one document on standard output, also where there are errors", async () => {
  studio.room("quay/den", "BROKEN");
  const said = await studio.run([...QUICK, "--json"]);
  expect(said.exit).toBe(1);
  expect(JSON.parse(said.out)).toMatchObject({
    built: ["mill"],
    kept: ["quay"],
    diagnostics: [{ code: "test", file: "projects/quay/den.md", line: 4 }],
  });
  expect(said.err).toContain("projects/quay/den.md:4:1  error: This is broken.");
  expect(said.err).toContain("Mend it.");
});

test("an error keeps that project's old trees, the others are new, and a mended one returns", async () => {
  await studio.run(QUICK);
  for (const room of ["quay/den", "mill/attic"]) studio.room(room, "second");
  studio.room("quay/hall", "BROKEN");
  expect((await studio.run(QUICK)).exit).toBe(1);
  expect(studio.made()).toEqual({
    ...EVERYTHING,
    "client/mill/attic/index.html": "second",
    "makers/workroom/mill/attic.html": "second",
  });
  studio.room("quay/hall", "second");
  expect((await studio.run(QUICK)).exit).toBe(0);
  expect(studio.made()["client/quay/hall/index.html"]).toBe("second");
});

test("an error in the studio's own file stops all and changes nothing", async () => {
  await studio.run(QUICK);
  studio.put("content/studio.md", "BROKEN");
  studio.room("quay/den", "second");
  const said = await studio.run([...QUICK, "--json"]);
  expect(said.exit).toBe(1);
  expect(JSON.parse(said.out)).toMatchObject({ built: [], kept: ["mill", "quay"], removed: [] });
  expect(studio.made()).toEqual(EVERYTHING);
});

test("a faulty layout keeps the projects that use it; the rest is built", async () => {
  await studio.run(QUICK);
  studio.put("layouts/documents/index.njk", "{{ model.nothing }}");
  for (const room of ["quay/den", "quay/hall", "mill/attic"]) studio.room(room, "second");
  const said = await studio.run(QUICK);
  expect(said.exit).toBe(1);
  expect(said.err).toContain("layouts/documents/index.njk");
  expect(studio.made()["studio/index.html"]).toContain("mill/attic");
  expect(studio.made()["client/quay/den/index.html"]).toBe("second");
});

test("deleted rooms and projects go", async () => {
  await studio.run(QUICK);
  rmSync(join(studio.content, "projects/quay/den.md"));
  rmSync(join(studio.content, "projects/mill"), { recursive: true });
  const said = await studio.run([...QUICK, "--json"]);
  expect(JSON.parse(said.out).removed).toEqual(["client/mill", "makers/workroom/mill"]);
  expect(Object.keys(studio.made())).toEqual([
    "client/quay/hall/index.html",
    "client/quay/style.css",
    "makers/workroom/quay/hall.html",
    "studio/index.html",
  ]);
});

test("--only builds one project or room and leaves all else as it is", async () => {
  await studio.run(QUICK);
  for (const room of ["quay/den", "quay/hall"]) studio.room(room, "second");
  studio.room("mill/attic", "BROKEN");
  const room = await studio.run([...QUICK, "--only", "quay/den"]);
  expect(room).toMatchObject({ exit: 0, err: "" });
  expect(studio.made()).toEqual({
    ...EVERYTHING,
    "client/quay/den/index.html": "second",
    "makers/workroom/quay/den.html": "second",
  });
  await studio.run([...QUICK, "--only", "quay"]);
  expect(studio.made()["client/quay/hall/index.html"]).toBe("second");
  expect(studio.made()["client/mill/attic/index.html"]).toBe("first");
});

test("a room that is built alone without PDFs loses its old PDF, the other rooms keep theirs", async () => {
  await studio.run(["build"]);
  await studio.run([...QUICK, "--only", "quay/den"]);
  const pdfs = Object.keys(studio.made()).filter((path) => path.endsWith(".pdf"));
  expect(pdfs).toEqual(["client/mill/attic/index.pdf", "client/quay/hall/index.pdf"]);
});

test.each([
  [["build", "--only", "key"], 'no project "key". Projects: mill, quay.'],
  [["build", "--only", "quay/dem"], 'no room "quay/dem". Rooms: quay/den, quay/hall.'],
  [["build", "--only", "a/b/c"], "neither PROJECT nor PROJECT/ROOM"],
  [["build", "--onyl", "quay"], "roomcloth: There is no option --onyl. Did you mean --only?"],
  [["build", "--xyzzy"], "There is no option --xyzzy. roomcloth build --help lists them all."],
  [["biuld"], "roomcloth: There is no command biuld. Did you mean build?"],
  [["quantities"], "After quantities comes a project's name, or a room's as project/room"],
  [["new", "item"], "After new item comes the kind of item, such as curtains or cushion: new item"],
  [["money", "nowhere"], 'no project "nowhere"'],
  [["check", "extra"], 'no project "extra". Projects: mill, quay.'],
  [["check", "quay", "extra"], "a slash: check quay/extra"],
  [["new", "project", "Orchard", "Row"], 'stands in quotes: new project "Orchard Row"'],
  [["fits", "fern", "2m"], "A measure stands behind its option: fits fern --length 2m"],
  [["swatch", "fern.jpg", "20cm"], "behind its option: swatch fern.jpg --shows 20cm"],
  [["new", "room", "quay", "Sitting", "room"], 'in quotes: new room quay "Sitting room"'],
  [["preview", "--port", "80x"], "whole number"],
  [["preview", "--json"], "no --json"],
  [["new", "room", "nowhere", "Den"], 'no project "nowhere"'],
  [["new", "project", "!!!"], "no letter or digit"],
  [[], "Usage: roomcloth"],
] as const)(
  "the command line %j is wrong: status 2, and nothing on standard output",
  async (args, words) => {
    const said = await studio.run(
      args.some((one) => one === "build") ? [...args, "--no-pdf"] : args,
    );
    expect(said.exit).toBe(2);
    expect(said.err).toContain(words);
    expect(said.out).toBe("");
  },
);

test("--help is no error", async () => {
  const said = await studio.run(["build", "--help"]);
  expect(said).toMatchObject({ exit: 0, err: "" });
  expect(said.out).toContain("--only <project[/room]>");
});

test("options that all verbs share may stand before or after the verb", async () => {
  const after = await studio.run(["check", "--json"]);
  const before = await studio.run(["--json", "check"]);
  expect(after.out).toBe(before.out);
  expect(JSON.parse(after.out).findings).toHaveLength(3);
});

test("check shows findings and errors and writes nothing", async () => {
  studio.room("quay/den", "BROKEN");
  const said = await studio.run(["check"]);
  expect(said.exit).toBe(1);
  expect(said.out).toContain("quay/hall: worth a look: Two are close.");
  expect(said.out).toContain("1 error, 0 warnings, 3 findings.");
  expect(existsSync(studio.out)).toBe(false);
});

test("check of one project or room leaves the others' mistakes and findings out", async () => {
  studio.room("mill/attic", "BROKEN");
  const quay = await studio.run(["check", "quay", "--json"]);
  expect(quay.exit).toBe(0);
  const rooms = (out: string) => JSON.parse(out).findings.map((f: { room: string }) => f.room);
  expect(new Set(rooms(quay.out))).toEqual(new Set(["quay/den", "quay/hall"]));
  const hall = await studio.run(["check", "quay/hall", "--json"]);
  expect(new Set(rooms(hall.out))).toEqual(new Set(["quay/hall"]));
  expect((await studio.run(["check", "mill"])).exit).toBe(1);
});

test.each(["quantities", "money"])(
  "%s reports on a project or a room, and says why it cannot",
  async (verb) => {
    expect(await studio.run([verb, "quay"])).toMatchObject({ exit: 0, out: "of quay\n" });
    const room = await studio.run([verb, "quay/den", "--json"]);
    expect(JSON.parse(room.out)).toEqual({ target: "quay/den" });
    studio.room("quay/den", "BROKEN");
    const broken = await studio.run([verb, "quay", "--json"]);
    expect(broken).toMatchObject({ exit: 1, out: "null\n" });
    expect(broken.err).toContain("This is broken.");
    expect((await studio.run([verb, "mill"])).exit).toBe(0);
  },
);

test("new makes starting files by title, and never writes over what is there", async () => {
  const room = join(studio.content, "projects/quay/salle-a-manger.md");
  studio.put("content/projects/quay/project.md", "---\nproject: Quay\n---\n");
  const first = await studio.run(["new", "room", "quay", "Salle à manger", "--json"]);
  expect(JSON.parse(first.out)).toMatchObject({ made: [room] });
  expect(readFileSync(room, "utf8")).toContain("Salle à manger");
  writeFileSync(room, "mine");
  expect((await studio.run(["new", "room", "quay", "Salle à manger"])).exit).toBe(1);
  expect(readFileSync(room, "utf8")).toBe("mine");

  await studio.run(["new", "project", "The Old Mill"]);
  expect(existsSync(join(studio.content, "projects/the-old-mill/project.md"))).toBe(true);

  const dir = join(studio.home, "a new/studio");
  expect((await studio.run(["new", "studio", dir])).exit).toBe(0);
  for (const name of ["studio.md", "cloths", "objects", "projects"])
    expect(existsSync(join(dir, name))).toBe(true);

  mkdirSync(join(studio.home, "camera"));
  const photo = join(studio.home, "camera/Fern_Trellis 2.JPG");
  writeFileSync(photo, "jpeg");
  await studio.run(["new", "cloth", photo, "--shows", "27in"]);
  expect(readFileSync(join(studio.content, "cloths/fern-trellis-2.jpg"), "utf8")).toBe("jpeg");
  expect(readFileSync(join(studio.content, "cloths/fern-trellis-2.md"), "utf8")).toContain(
    '"shows":"27in"',
  );
  expect((await studio.run(["new", "cloth", join(studio.home, "no.jpg")])).exit).toBe(2);
});
