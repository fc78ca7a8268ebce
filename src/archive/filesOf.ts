import type { Records } from "../records/records.ts";
import { byPath } from "./bag/paths.ts";

/** What may lie in a content folder: cards and records of what was sent by their path, and all other files. */
export interface ContentPaths {
  readonly files: readonly { readonly path: string }[];
  readonly sent: readonly { readonly path: string }[];
  readonly present: readonly string[];
}

/**
 * The files of a content folder that a project was made from, sorted: `studio.md` with its mark, everything in the project's folder, and
 * the cards that it names with their photographs. A picture that is not there is left out: reading has said so.
 */
export function filesOf(project: string, records: Records, content: ContentPaths): string[] {
  const found = records.projects.find((each) => each.id === project);
  const there = new Map(
    [...content.files, ...content.sent, ...content.present.map((path) => ({ path }))].map(
      ({ path }) => [path.normalize("NFC"), path] as const,
    ),
  );
  const cards = new Set(found?.cards ?? []);
  const photos = [...records.cloths.values(), ...records.objects.values()]
    .filter((card) => cards.has(card.path))
    .flatMap((card) => {
      const file = card.fields.photo?.file;
      return file ? [`${card.path.split("/")[0]}/${file}`] : [];
    });
  const mark = records.studio?.fields.mark;
  const named = ["studio.md", ...(mark ? [mark] : []), ...cards, ...photos].flatMap(
    (path) => there.get(path.normalize("NFC")) ?? [],
  );
  const own = [...there.values()].filter((path) =>
    path.normalize("NFC").startsWith(`projects/${project}/`),
  );
  return [...new Set([...named, ...own])].sort(byPath);
}
