import { hasErrors } from "../../src/diagnostics/diagnostic.ts";
import { ITEM_KINDS } from "../../src/items/kinds.ts";
import { projectQuantities } from "../../src/quantities/projectQuantities.ts";
import type { ProjectQuantities } from "../../src/quantities/quantityTypes.ts";
import { readRecords } from "../../src/records/readRecords.ts";
import type { ProjectRecord, Records } from "../../src/records/records.ts";
import type { LookUps } from "../../src/room/lookUps.ts";
import { clothFacts } from "../../src/swatches/clothFacts.ts";

/** The files of a small studio; each text is what stands between the fences. */
export interface SmallStudio {
  readonly studio?: string;
  readonly project?: string;
  readonly cloths?: Readonly<Record<string, string>>;
  readonly objects?: Readonly<Record<string, string>>;
  readonly rooms: Readonly<Record<string, string>>;
}

export const STUDIO_CM = `studio: Test
language: en-GB
units: centimetres
currency: EUR
paper: a3`;

export const STUDIO_INCHES = `studio: Test
language: en-US
units: inches
currency: USD
paper: tabloid`;

export const PROJECT = `project: Test
client: { name: Nobody }
status: proposed`;

/** Reads a small studio through the program's own reader. */
export function recordsOf(small: SmallStudio): Records {
  const card = (path: string, text: string) => ({ path, text: `---\n${text.trim()}\n---\n` });
  const all = (folder: string, cards: Readonly<Record<string, string>> = {}) =>
    Object.entries(cards).map(([id, text]) => card(`${folder}/${id}.md`, text));
  return readRecords({
    files: [
      card("studio.md", small.studio ?? STUDIO_CM),
      ...all("cloths", small.cloths),
      ...all("objects", small.objects),
      card("projects/test/project.md", small.project ?? PROJECT),
      ...all("projects/test", small.rooms),
    ],
    present: [],
    items: ITEM_KINDS,
  });
}

export function lookUpsOf(records: Records): LookUps {
  return {
    cloth: (id) => {
      const cloth = records.cloths.get(id);
      return cloth ? clothFacts(cloth, null) : null;
    },
    objectColours: () => [],
  };
}

export function projectOf(records: Records): ProjectRecord {
  const project = records.projects[0];
  if (!project || hasErrors(records.diagnostics)) {
    throw new Error(records.diagnostics.map((d) => `${d.file}:${d.line} ${d.message}`).join("\n"));
  }
  return project;
}

/** The quantities of a small studio's one project. Reading errors fail the test that asks. */
export function quantitiesOf(small: SmallStudio): ProjectQuantities {
  const records = recordsOf(small);
  return projectQuantities(records, projectOf(records), ITEM_KINDS, lookUpsOf(records));
}
