import type { ItemData, ProjectData, RoomData } from "../../documents/projectData.ts";
import { dateInWords } from "../../documents/words/dates.ts";
import { inVocabulary, keyWords } from "../../documents/words/inVocabulary.ts";
import type { HardwareFields } from "../../fields/itemBase.ts";
import { madeAs } from "../../revisions/madeAs.ts";
import { partNames } from "../../revisions/partNames.ts";
import { partsAs } from "../../revisions/partsAs.ts";

/** Keys of a paint that its own line of the record has. */
const IN_COLOUR = new Set(["colour", "name", "finish"]);

/**
 * How an item was made, as its room's file has it, each line with its label: its measures and words, its place, its pieces and what was
 * bought ready with it. It is what one asks for when it is to be made again.
 */
export function madeLines(item: ItemData, room: RoomData, data: ProjectData): [string, string][] {
  const { record } = item;
  const { studio, records } = data;
  const { units, language } = studio.fields;
  const made = madeAs(record, units, (id) => records.cloths.has(id));
  const parts = partsAs(record, units, partNames(room.items, records, language));
  const words = Object.entries(made)
    .filter(([key]) => !IN_COLOUR.has(key))
    .map(([key, text]) =>
      key === "count" ? `${text} of them` : keyWords(`${key} ${text}`, language),
    );
  const edge = parts.edge ? [`edge ${inVocabulary(parts.edge, language)}`] : [];
  const pieces = Object.entries(parts)
    .filter(([key]) => key.includes("/"))
    .map(
      ([key, text]) =>
        `${keyWords(key.slice(key.indexOf("/") + 1), language)} ${inVocabulary(text, language)}`,
    );
  return [
    ["Made", [...words, ...edge].join("; ")],
    ["Place", inVocabulary(parts.at ?? parts.on ?? "", language)],
    ["Pieces", pieces.join("; ")],
    ["Bought ready", readyWords(record.fields as { readonly hardware?: HardwareFields[] }, data)],
  ];
}

function readyWords(
  { hardware }: { readonly hardware?: readonly HardwareFields[] },
  { studio }: ProjectData,
): string {
  const { language, suppliers } = studio.fields;
  const day = (word: string, on: string | undefined): string[] =>
    on ? [`${word} on ${dateInWords(on, language)}`] : [];
  return (hardware ?? [])
    .map(({ what, count, supplier, ordered, arrived }) =>
      [
        count && count > 1 ? `${count} × ${what}` : what,
        ...(supplier ? [`from ${suppliers?.[supplier]?.name ?? supplier}`] : []),
        ...day("ordered", ordered),
        ...day("came", arrived),
      ].join(", "),
    )
    .join("; ");
}
