import { join } from "node:path";
import { expect, test } from "vitest";
import { parseDocument } from "yaml";
import type { FieldSchema } from "../../../src/cli/starter/fieldLines.ts";
import { schemaOf } from "../../../src/cli/starter/schemaOf.ts";
import { starter } from "../../../src/cli/starter/starter.ts";
import type { StarterWanted } from "../../../src/cli/wiring.ts";
import { ITEM_KINDS } from "../../../src/items/kinds.ts";
import { allowancesSchema } from "../../../src/records/allowancesSchema.ts";
import { readRecords } from "../../../src/records/readRecords.ts";
import { clothSchema } from "../../../src/records/schema/clothSchema.ts";
import { projectSchema } from "../../../src/records/schema/projectSchema.ts";
import { roomSchema } from "../../../src/records/schema/roomSchema.ts";
import { studioSchema } from "../../../src/records/schema/studioSchema.ts";
import { triedOut } from "./tryOut.ts";

// The demo studio's animal-marked cloth; 11 inches from left to right, repeat 6 3/4 inches both ways.
const PHOTO = join(import.meta.dirname, "../../../content/cloths/fallow.jpg");
const CLOTH = { kind: "cloth", title: "Fallow", photo: PHOTO, file: "fallow.jpg" } as const;

async function text(wanted: StarterWanted): Promise<string> {
  const made = await starter(wanted);
  expect(made.diagnostics.filter((one) => one.severity === "error")).toEqual([]);
  return made.value ?? "";
}

test("a new studio with a project, a room and a cloth has no errors as it stands", async () => {
  const files = [
    { path: "studio.md", text: await text({ kind: "studio" }) },
    {
      path: "projects/old-mill/project.md",
      text: await text({ kind: "project", title: "Old mill" }),
    },
    {
      path: "projects/old-mill/den.md",
      text: await text({ kind: "room", title: "Den: 8' 6\" #2", items: null }),
    },
    { path: "cloths/fallow.md", text: await text({ ...CLOTH, shows: '11"' }) },
  ];
  const records = readRecords({ files, present: ["cloths/fallow.jpg"], items: ITEM_KINDS });
  expect(records.diagnostics.filter((one) => one.severity === "error")).toEqual([]);
  expect(records.projects[0]?.rooms.map((room) => room.fields.room)).toEqual(["Den: 8' 6\" #2"]);
});

/** The file as it is when every example line is used, and its keys at all depths. */
function opened(made: string): { errors: readonly string[]; keys: ReadonlySet<string> } {
  const front = made.split("---\n")[1] ?? "";
  const used = front
    .split("\n")
    .slice(2)
    .filter((line) => !/^\s*# {3}\S.*:? /.test(line) || /^\s*# {3,}(?:- )?[a-z-]+:/.test(line))
    .map((line) => line.replace(/^(\s*)# /, "$1"))
    .join("\n");
  const document = parseDocument(used, { schema: "failsafe" });
  const keys = new Set<string>();
  const walk = (value: unknown): void => {
    if (Array.isArray(value)) for (const one of value) walk(one);
    else if (typeof value === "object" && value !== null) {
      for (const [key, inside] of Object.entries(value)) {
        keys.add(key);
        walk(inside);
      }
    }
  };
  walk(document.toJS());
  return { errors: document.errors.map((one) => one.message), keys };
}

/** All keys of a schema, at all depths, where the first of several forms stands for all. */
function keysOf(schema: FieldSchema): readonly string[] {
  // A kind without allowances has no line of them.
  const isEmpty = (field: FieldSchema): boolean =>
    field.properties !== undefined && Object.keys(field.properties).length === 0;
  const own = Object.entries(schema.properties ?? {}).filter(([, field]) => !isEmpty(field));
  const more = [schema.items, schema.additionalProperties, schema.anyOf?.[0]];
  return [
    ...own.flatMap(([key, field]) => [key, ...keysOf(field)]),
    ...more.flatMap((one) => (typeof one === "object" ? keysOf(one) : [])),
  ];
}

test("every field is there, and the file is still right when all marks are taken away", async () => {
  const studio = opened(await text({ kind: "studio" }));
  const project = opened(await text({ kind: "project", title: "Old mill" }));
  const room = opened(await text({ kind: "room", title: "Den", items: null }));
  const cloth = opened(await text({ ...CLOTH, shows: null }));
  for (const one of [studio, project, room]) expect(one.errors).toEqual([]);
  const missing = (schema: FieldSchema, keys: ReadonlySet<string>): readonly string[] =>
    keysOf(schema).filter((key) => !keys.has(key));
  expect(missing(schemaOf(studioSchema(allowancesSchema(ITEM_KINDS))), studio.keys)).toEqual([]);
  expect(missing(schemaOf(projectSchema), project.keys)).toEqual([]);
  expect(missing(schemaOf(roomSchema), room.keys)).toEqual([]);
  expect(missing(schemaOf(clothSchema), cloth.keys)).toEqual([]);
  for (const { kind, schema } of ITEM_KINDS) {
    expect(room.keys.has(kind)).toBe(true);
    expect(missing(schemaOf(schema), room.keys)).toEqual([]);
  }
});

test("a room begins with the kinds of items that are named, and says once what every item can say", async () => {
  const items = async (names: readonly string[] | null) =>
    (await text({ kind: "room", title: "Den", items: names })).split("# items:")[1] ?? "";
  const made = await items(["curtains", " Pillows "]);
  expect(made.match(/^# {3}- ([a-z-]+):/gm)).toEqual(["#   - curtains:", "#   - cushion:"]);
  const whole = await items(null);
  for (const one of [made, whole]) {
    expect(one.match(/^# {5}hardware:/gm)).toHaveLength(1);
    expect(one.match(/^# {5}second-hand:/gm)).toHaveLength(1);
  }
  expect(whole.match(/^# {3}- [a-z-]+:/gm)).toHaveLength(ITEM_KINDS.length);
  expect(made).toContain("new item");
});

test("the lines of one item stand in a room as they are printed; what is no kind is said", async () => {
  for (const { kind, schema } of ITEM_KINDS) {
    const lines = await text({ kind: "item", item: kind });
    const room = `---\nroom: Den\nitems:\n${lines}\n---\n`;
    const { diagnostics } = readRecords({
      files: [
        { path: "studio.md", text: await text({ kind: "studio" }) },
        {
          path: "projects/old-mill/project.md",
          text: await text({ kind: "project", title: "Old mill" }),
        },
        { path: "projects/old-mill/den.md", text: room },
      ],
      present: [],
      items: ITEM_KINDS,
    });
    // What is left to be filled in is asked for, and nothing else is wrong.
    const wrong = diagnostics.filter((one) => one.severity === "error");
    const at = (line: number | null) => room.split("\n")[(line ?? 0) - 1] ?? "";
    for (const { line, message } of wrong) expect(at(line), message).toContain("(write here)");
    for (const key of (schemaOf(schema).required ?? []).slice(1))
      expect(lines).toMatch(new RegExp(`^ {4}${key}: \\(write here\\)`, "m"));
    expect(lines).toMatch(/^ {4}# hardware:/m);
  }
  await expect(starter({ kind: "item", item: "otoman" })).rejects.toThrow("Did you mean ottoman?");
});

test("a cloth's card is filled from its photograph, in the units of what it shows", async () => {
  const inches = await text({ ...CLOTH, shows: '11"' });
  expect(inches).toMatch(/^ {2}shows: 11" /m);
  expect(inches).toMatch(/^# {3}colours: .+ #[0-9a-f]{6} \d+%/m);
  expect(inches).toMatch(/^(?: {2}up: 6 (?:11\/16|3\/4|13\/16)"|# {3}repeat, perhaps: 6 \S+")/m);
  const centimetres = await text({ ...CLOTH, shows: "27.94 cm" });
  expect(centimetres).toMatch(/(?:up: |perhaps: )17\.[0-3] cm/);
});

test("without what the photograph shows no size is made up; an unreadable length is said", async () => {
  const made = await text({ ...CLOTH, shows: null });
  expect(made).toContain("# repeat:");
  expect(made).not.toContain("motif:  ");
  expect(made).not.toMatch(/^# {3}motif/m);
  const wrong = await starter({ ...CLOTH, shows: "eleven" });
  expect(wrong.value).toBeNull();
  expect(wrong.diagnostics[0]?.code).toBe("length-unreadable");
});

test("a photograph that cannot be read is said, and no card is made", async () => {
  const made = await starter({
    ...CLOTH,
    photo: join(import.meta.dirname, "none.jpg"),
    shows: null,
  });
  expect(made.value).toBeNull();
  expect(made.diagnostics[0]?.severity).toBe("error");
});

/** A name that only she can give: a card, a maker, a supplier, a room or a picture of her own. */
const HER_OWN = /-unknown$|^picture-missing$/;

test("every commented example can be used: its line, with what belongs to it, is read without an error", async () => {
  const whole: Readonly<Record<string, string>> = {
    "studio.md": await text({ kind: "studio" }),
    "projects/old-mill/project.md": await text({ kind: "project", title: "Old mill" }),
    "projects/old-mill/den.md": await text({ kind: "room", title: "Den", items: null }),
    "cloths/fallow.md": await text({ ...CLOTH, shows: '11"' }),
  };
  let tried = 0;
  for (const [path, file] of Object.entries(whole)) {
    for (const one of triedOut(file)) {
      tried++;
      const files = Object.entries({ ...whole, [path]: one.file }).map(([name, used]) => ({
        path: name,
        text: used,
      }));
      const { diagnostics } = readRecords({
        files,
        present: ["cloths/fallow.jpg"],
        items: ITEM_KINDS,
      });
      const wrong = diagnostics.filter((d) => d.severity === "error" && !HER_OWN.test(d.code));
      expect(
        wrong.map((d) => `${d.line}: ${d.message}`),
        `${path}: ${one.line}`,
      ).toEqual([]);
    }
  }
  expect(tried).toBeGreaterThan(80);
});
