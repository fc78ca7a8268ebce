import { type Diagnostic, diagnostic, type Place } from "../../diagnostics/diagnostic.ts";
import type { ProjectData } from "../projectData.ts";

/** A letter of a script for which the house has a face, or one that belongs to every script. */
const KNOWN =
  /^[\p{Script=Latin}\p{Script=Greek}\p{Script=Cyrillic}\p{Script=Hebrew}\p{Script=Arabic}\p{Script=Common}\p{Script=Inherited}]*$/u;

/**
 * Names in a script for which no face is at hand: the pages can then not be the same on every machine. A warning each, at the place
 * where the name stands.
 */
export function checkLetters(data: ProjectData): Diagnostic[] {
  const { project, studio, records } = data;
  const names: { readonly text: string | undefined; readonly place: () => Place }[] = [
    { text: project.fields.project, place: () => project.place(["project"]) },
    { text: project.fields.client.name, place: () => project.place(["client", "name"]) },
    ...(project.fields.approvals ?? []).map(({ by }, at) => ({
      text: by,
      place: () => project.place(["approvals", at, "by"]),
    })),
    ...(project.fields.payments ?? []).map(({ what }, at) => ({
      text: what,
      place: () => project.place(["payments", at, "what"]),
    })),
    { text: studio.fields.studio, place: () => studio.place(["studio"]) },
    ...data.rooms.flatMap(({ record, items, scheme }) => [
      { text: record.fields.room, place: () => record.place(["room"]) },
      { text: record.fields.standfirst, place: () => record.place(["standfirst"]) },
      { text: record.body, place: () => record.place(["room"]) },
      ...items.map((i) => ({ text: i.record.title, place: () => i.record.place([]) })),
      ...scheme.roles.flatMap((role) => {
        const card = records.cloths.get(role.cloth);
        return card ? [{ text: card.fields.cloth, place: () => card.place(["cloth"]) }] : [];
      }),
    ]),
  ];
  const told = new Set<string>();
  return names.flatMap(({ text, place }) => {
    const words = (text ?? "").split(/\s+/).filter((word) => !KNOWN.test(word));
    const word = words[0];
    if (word === undefined || told.has(word)) return [];
    told.add(word);
    return [
      diagnostic(
        place(),
        "letters-without-face",
        `“${word}” is in letters for which there is no typeface here: it is printed in whatever this computer has, and may look otherwise, or be missing, on another.`,
        {
          severity: "warning",
          actual: word,
          hint: "There are typefaces for Latin, Greek, Cyrillic, Hebrew and Arabic letters. Write the name in one of these, or look closely at every page that bears it.",
        },
      ),
    ];
  });
}
