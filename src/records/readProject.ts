import { type Diagnostic, diagnostic } from "../diagnostics/diagnostic.ts";
import { checkProjectDays } from "./checks/dates.ts";
import type { Known, Use } from "./checks/known.ts";
import { checkReferences } from "./checks/references.ts";
import { checkSums } from "./checks/sums.ts";
import { nodeAt } from "./frontMatter/node.ts";
import type { ItemTable } from "./itemTable.ts";
import { type Card, complain, placeIn } from "./reading/card.ts";
import { collectLeaves } from "./reading/collectLeaves.ts";
import { idOf, type Reading, readCard, type TextFile } from "./reading/readCard.ts";
import { sameName } from "./readLibrary.ts";
import { readRoom } from "./readRoom.ts";
import type { ProjectRecord, RoomRecord } from "./records.ts";
import { projectSchema } from "./schema/projectSchema.ts";
import type { ProjectFiles } from "./sortFiles.ts";

/** A project as far as it could be read; `broken` and `cards` are settled by who knows the cards of the library. */
export interface ReadProject {
  readonly record: Omit<ProjectRecord, "broken" | "cards"> | null;
  readonly uses: readonly Use[];
  readonly diagnostics: readonly Diagnostic[];
}

function order(
  card: Card | null,
  ids: readonly string[],
): { readonly ids: readonly string[]; readonly diagnostics: readonly Diagnostic[] } {
  const list = card ? nodeAt(card.root, ["rooms"]) : null;
  if (card === null || list?.kind !== "list") return { ids, diagnostics: [] };
  const wanted = list.entries.flatMap((entry) =>
    entry.kind === "text" ? [entry.text.trim().normalize("NFC")] : [],
  );
  const left = ids.filter((id) => !wanted.includes(id));
  const diagnostics = [
    ...left.map((id) =>
      complain(card, ["rooms"], {
        code: "room-not-listed",
        severity: "warning",
        message: `The room “${id}” is not in this list; it comes after the others.`,
        expected: id,
        hint: "Add it where it should come.",
      }),
    ),
    ...wanted.flatMap((id, at) =>
      wanted.indexOf(id) === at
        ? []
        : [
            complain(card, ["rooms", at], {
              code: "room-twice",
              message: `“${id}” is in this list already.`,
              actual: id,
              hint: "Keep one of the two.",
            }),
          ],
    ),
  ];
  return { ids: [...new Set([...wanted.filter((id) => ids.includes(id)), ...left])], diagnostics };
}

/** An instalment that says nothing of what is to be paid, or says it twice. */
function checkInstalments(card: Card): Diagnostic[] {
  const list = nodeAt(card.root, ["instalments"]);
  if (list?.kind !== "list") return [];
  return list.entries.flatMap((entry, at) => {
    if (entry.kind !== "map") return [];
    const parts = entry.entries.filter(({ key }) =>
      ["deposit", "interim", "balance"].includes(key),
    );
    if (parts.length === 1) return [];
    const message =
      parts.length === 0
        ? "This instalment does not say what is to be paid."
        : "This instalment says twice what is to be paid.";
    return [
      complain(card, ["instalments", at], {
        code: "instalment-unclear",
        message,
        expected: "deposit, interim or balance",
        hint: "Write one of deposit, interim and balance, for example { deposit: 50%, due: approval }.",
      }),
    ];
  });
}

/** A warning at each room that is called as one before it is: most often a copy of its file that was left there. */
function roomsCalledAlike(
  rooms: readonly (RoomRecord | null)[],
  files: readonly TextFile[],
): Diagnostic[] {
  const read = rooms.filter((room) => room !== null);
  const called = (room: RoomRecord): string => room.fields.room.trim().toLowerCase();
  return read.flatMap((room, at): Diagnostic[] => {
    const other = read.slice(0, at).find((earlier) => called(earlier) === called(room));
    if (!other) return [];
    const name = other.path.split("/").at(-1) as string;
    const place = room.place(["room"]);
    const lines = files.find((file) => file.path === room.path)?.text.split(/\r?\n/);
    return [
      diagnostic(
        place,
        "room-called-twice",
        `The room in ${name} is called ${room.fields.room} too, and both are drawn, bought for and charged.`,
        {
          severity: "warning",
          actual: room.fields.room,
          excerpt: place.line === null ? null : (lines?.[place.line - 1] ?? null),
          hint: "Give one of them another name; or, if it is a copy, move it out of the project's folder.",
        },
      ),
    ];
  });
}

/** Reads a project's card and its rooms. */
export function readProject(
  files: ProjectFiles,
  table: ItemTable,
  reading: Reading,
  known: Known,
  currency: string | null,
): ReadProject {
  const rooms = files.rooms.map((file, at) => ({
    id: idOf(file.path),
    twice: sameName(file, files.rooms.slice(0, at)),
    read: readRoom(file, files.id, table, reading, known, currency),
  }));
  const ids = rooms.map((room) => room.id);
  const read = files.card ? readCard(files.card, projectSchema, reading) : null;
  const card = read?.card ?? null;
  const leaves = card ? collectLeaves(card.root, projectSchema) : [];
  const references = card ? checkReferences(card, leaves, { ...known, rooms: new Set(ids) }) : null;
  const ordered = order(card, ids);
  const place = {
    file: files.card?.path ?? `projects/${files.id}/project.md`,
    line: null,
    column: null,
    keyPath: null,
  };
  const own = [
    ...(read
      ? read.diagnostics
      : [
          diagnostic(
            place,
            "project-card-missing",
            `The project “${files.id}” has no project.md.`,
            { hint: "Write one, or let roomcloth begin it: roomcloth new project" },
          ),
        ]),
    ...(ids.length === 0
      ? [
          diagnostic(place, "project-without-rooms", "This project has no room yet.", {
            severity: "warning",
            hint: "Write a file for each room beside project.md.",
          }),
        ]
      : []),
    ...(references?.diagnostics ?? []),
    ...ordered.diagnostics,
    ...(card
      ? [...checkInstalments(card), ...checkSums(card, leaves, currency), ...checkProjectDays(card)]
      : []),
    ...roomsCalledAlike(
      rooms.map((room) => room.read.record),
      files.rooms,
    ),
  ];
  const records: RoomRecord[] = ordered.ids.flatMap(
    (id) => rooms.find((room) => room.id === id)?.read.record ?? [],
  );
  const record =
    read?.fields && card && files.card
      ? {
          id: files.id,
          path: files.card.path,
          fields: read.fields,
          body: read.body,
          rooms: records,
          place: (path: Parameters<ProjectRecord["place"]>[0]) => placeIn(card, path),
        }
      : null;
  return {
    record,
    uses: [...(references?.uses ?? []), ...rooms.flatMap((room) => room.read.uses)],
    diagnostics: [...own, ...rooms.flatMap((room) => [...room.twice, ...room.read.diagnostics])],
  };
}
