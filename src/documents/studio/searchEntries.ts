import { capital, within } from "../../units/capital.ts";
import { accountPath, boardPath, ordersPath, STUDIO_INDEX } from "../paths.ts";
import type { ItemData, ProjectData, RoomData } from "../projectData.ts";
import { wayTo } from "../ways.ts";
import { listed, placesOf } from "../words/phrases.ts";

/** Something that a question years later may ask for, and the page that answers. */
export interface SearchEntry {
  readonly id: number;
  readonly title: string;
  /** In which project, and where in it. */
  readonly where: string;
  /** All else that it may be asked for by: suppliers, numbers, lots, colours, makers. */
  readonly words: string;
  readonly href: string;
}

type Found = Omit<SearchEntry, "id">;

/** Every project, room, item and cloth of the studio, for the search on its index. */
export function searchEntries(all: readonly ProjectData[]): SearchEntry[] {
  const found = all.flatMap((data) => [
    projectEntry(data),
    ...data.rooms.flatMap((room) => [
      roomEntry(data, room),
      ...room.items.map((item) => itemEntry(data, room, item)),
    ]),
    ...clothEntries(data),
  ]);
  return found.map((entry, id) => ({ id, ...entry }));
}

const words = (...all: readonly (string | undefined)[]): string =>
  all.filter((each) => each !== undefined && each !== "").join(" ");

function projectEntry({ project, account }: ProjectData): Found {
  const { client, status, revision } = project.fields;
  return {
    title: project.fields.project,
    where: `${capital(status)}, for ${client.name}`,
    words: words(
      client.address,
      client.email,
      client.phone,
      revision && `revision ${revision}`,
      ...account.payments.map((p) => p.on),
    ),
    href: wayTo(STUDIO_INDEX, accountPath(project.id)),
  };
}

function roomEntry({ project }: ProjectData, { record, scheme }: RoomData): Found {
  return {
    title: capital(record.fields.room),
    where: project.fields.project,
    words: words(
      ...scheme.palette.colours.map((c) => c.name),
      ...(record.fields.accessories ?? []).map((a) => a.what),
    ),
    href: wayTo(STUDIO_INDEX, boardPath(project.id, record.id)),
  };
}

function itemEntry(data: ProjectData, room: RoomData, item: ItemData): Found {
  const { project, studio, swatches, objects } = data;
  const fields = item.record.fields as {
    readonly object?: string;
    readonly name?: string;
    readonly hardware?: readonly { readonly what: string }[];
  };
  const language = studio.fields.language as "en-US";
  const object = fields.object ? objects.get(fields.object)?.name : undefined;
  const kind = item.kind.words[language].one;
  const cloths = item.kind.cloths(item.record.fields as never).map((use) => use.cloth);
  return {
    title: object ?? `${capital(kind)}: ${item.record.title}`,
    where: `${project.fields.project}, ${within(room.record.fields.room)}`,
    words: words(
      ...cloths.map((id) => swatches.get(id)?.name),
      item.maker ? studio.fields.makers?.[item.maker]?.name : undefined,
      fields.name,
      ...(fields.hardware ?? []).map((h) => h.what),
    ),
    href: wayTo(STUDIO_INDEX, boardPath(project.id, room.record.id)),
  };
}

/** The cloths of a project with where they went, whom they are from, and the lots that came. */
function clothEntries(data: ProjectData): Found[] {
  const { project, studio, records, swatches } = data;
  const language = studio.fields.language as "en-US";
  const ids = [...new Set(data.rooms.flatMap((r) => r.scheme.roles.map((role) => role.cloth)))];
  return ids.flatMap((id): Found[] => {
    const card = records.cloths.get(id);
    if (!card) return [];
    const { cloth, supplier, reference, fibre } = card.fields;
    const places = data.rooms.flatMap((room) => placesOf(id, room, language));
    return [
      {
        title: cloth,
        where: `${project.fields.project}${places.length > 0 ? `: ${listed(places)}` : ""}`,
        words: words(
          supplier && (studio.fields.suppliers?.[supplier]?.name ?? supplier),
          reference,
          fibre,
          ...(swatches.get(id)?.colours ?? []).map((c) => c.name),
          ...(project.fields.receipts ?? []).filter((r) => r.cloth === id).map((r) => r.lot),
          ...(project.fields.orders ?? []).filter((o) => o.cloth === id).map((o) => o.number),
        ),
        href: wayTo(STUDIO_INDEX, ordersPath(project.id)),
      },
    ];
  });
}
