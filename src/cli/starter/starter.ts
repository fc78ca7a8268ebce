import type { z } from "zod";
import { type MeasureSettings, USUAL_SETTINGS } from "../../cloth/measureSettings.ts";
import { diagnostic } from "../../diagnostics/diagnostic.ts";
import { ITEM_KINDS } from "../../items/kinds.ts";
import { allowancesSchema } from "../../records/allowancesSchema.ts";
import { clothSchema } from "../../records/schema/clothSchema.ts";
import { projectSchema } from "../../records/schema/projectSchema.ts";
import { roomSchema } from "../../records/schema/roomSchema.ts";
import { studioSchema } from "../../records/schema/studioSchema.ts";
import { readMeasureSettings, readStudioRecords } from "../../site/readLibrary.ts";
import { parseLength } from "../../units/parseLength.ts";
import type { Starter } from "../wiring.ts";
import { type Filling, fieldLines } from "./fieldLines.ts";
import { inMetric } from "./inMetric.ts";
import { measuredCloth } from "./measuredCloth.ts";
import { itemOf, kindsNamed, roomItems } from "./roomItems.ts";
import { type FieldsOf, schemaOf } from "./schemaOf.ts";

/**
 * Commented starting files. They are written out of the schemas that read them, so no field is missing
 * and none is explained otherwise than it is read.
 */
export const starter: Starter = async (wanted) => {
  switch (wanted.kind) {
    case "studio":
      return whole(STUDIO, studioCard(), { currency: "USD" }, [], "");
    case "project":
      return whole(
        PROJECT,
        projectSchema,
        { project: wanted.title },
        [],
        "",
        await fieldsIn(wanted.contentDir),
      );
    case "room": {
      const fields = await fieldsIn(wanted.contentDir);
      const body = "What the client reads about this room.\n";
      const items = roomItems(kindsNamed(wanted.items), fields);
      return whole(ROOM, roomSchema, { room: wanted.title }, items, body, fields);
    }
    case "item":
      return { value: itemOf(wanted.item, await fieldsIn(wanted.contentDir)), diagnostics: [] };
    case "cloth": {
      const { title, photo, file, shows, contentDir } = wanted;
      if (shows !== null && !parseLength(shows).ok)
        return { value: null, diagnostics: [noLength(shows)] };
      const card = await measuredCloth(photo, shows, await settingsIn(contentDir));
      if (card.value === null) return { value: null, diagnostics: card.diagnostics };
      const { filling, notes } = card.value;
      const picture = { file, ...(shows === null ? {} : { shows }) };
      const measured = ["# Measured in the photograph:", ...notes.map((note) => `#   ${note}`)];
      const text = whole(
        CLOTH,
        clothSchema,
        { cloth: title, photo: picture, ...filling },
        measured,
        "",
        await fieldsIn(contentDir),
      );
      return { value: text.value, diagnostics: card.diagnostics };
    }
  }
};

async function settingsIn(contentDir: string | undefined): Promise<MeasureSettings> {
  return contentDir === undefined
    ? USUAL_SETTINGS
    : (await readMeasureSettings(contentDir)).settings;
}

/** The fields of a schema with examples in the units of the studio there; in inches where there is none that can be read. */
async function fieldsIn(contentDir: string | undefined): Promise<FieldsOf> {
  const studio = contentDir === undefined ? null : (await readStudioRecords(contentDir)).studio;
  const isMetric = studio?.fields.units === "centimetres";
  return isMetric ? (schema) => inMetric(schemaOf(schema)) : schemaOf;
}

/** A maker's allowances are the studio's over again: one kind is example enough. */
function studioCard(): z.ZodType {
  const [first, ...rest] = [ITEM_KINDS.slice(0, 1), ITEM_KINDS].map(allowancesSchema);
  return studioSchema(rest[0] as z.ZodType, [], first);
}

const STUDIO = "The studio: letterhead, units, money, makers and suppliers.";
const PROJECT = "A project: the client, what was agreed, what was paid, what arrived.";
const ROOM = 'A room. Lengths as you write them: 84 1/2", 7\' 2", 2.14 m, 214 cm.';
const CLOTH = "A cloth, wallcovering, lining or trim. What stands here wins over the photograph.";

function whole(
  head: string,
  schema: z.ZodType,
  filling: Filling,
  more: readonly string[],
  body: string,
  fields: FieldsOf = schemaOf,
): { readonly value: string; readonly diagnostics: readonly never[] } {
  // `items` of a room is read apart, by each kind's own schema.
  const own = fieldLines(fields(schema), filling).filter((line) => !/^# items:/.test(line));
  const lines = [
    "---",
    `# ${head}`,
    "# Take away a leading # to use a line.",
    ...own,
    ...more,
    "---",
  ];
  return { value: `${lines.join("\n")}\n${body}`, diagnostics: [] };
}

function noLength(shows: string) {
  return diagnostic(
    { file: "", line: null, column: null, keyPath: null },
    "length-unreadable",
    `"${shows}" cannot be read as a length.`,
    { actual: shows, hint: `Write for example --shows 27in or --shows "68 cm".` },
  );
}
