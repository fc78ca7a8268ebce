import { readContent } from "../cli/content/readContent.ts";
import { type Diagnostic, diagnostic, hasErrors } from "../diagnostics/diagnostic.ts";
import { allPages } from "../documents/pages.ts";
import type { ItemData, ProjectData, RoomData } from "../documents/projectData.ts";
import { NO_CACHE, openCache } from "../images/cache.ts";
import { ITEM_KINDS } from "../items/kinds.ts";
import { pricedItemsOf, purchasesOf } from "../money/fromQuantities.ts";
import { moneyText } from "../money/moneyText.ts";
import { projectMoney } from "../money/projectMoney.ts";
import { moneyJson } from "../money/toJson.ts";
import { cacheSubfolder } from "../press/cacheFolder.ts";
import { projectQuantities, roomQuantities } from "../quantities/projectQuantities.ts";
import { quantitiesText } from "../quantities/quantitiesText.ts";
import { quantitiesJson } from "../quantities/toJson.ts";
import { readRecords } from "../records/readRecords.ts";
import type { ProjectRecord, Records, StudioRecord } from "../records/records.ts";
import type { FurnishedRoom } from "../room/furnishRoom.ts";
import { visibleAreas } from "../room/visibleAreas.ts";
import { FINDING_CODES } from "../scheme/finding.ts";
import { roomScheme } from "../scheme/roomScheme.ts";
import { clothFacts } from "../swatches/clothFacts.ts";
import type { Computed, FindingLine, Report } from "./computed.ts";
import { readSwatches, type Swatches } from "./readSwatches.ts";
import { ASSETS } from "./treeAssets.ts";

const KINDS = new Map(ITEM_KINDS.map((kind) => [kind.kind, kind]));

/** The colour that the board stands on: the first paint on walls, else the average of the first paper. */
function wallColour(room: FurnishedRoom, swatches: Swatches): string | null {
  for (const item of room.items) {
    const fields = item.record.fields as { on?: unknown; colour?: string };
    if (
      item.record.kind === "paint" &&
      fields.on !== "ceiling" &&
      fields.on !== "woodwork" &&
      fields.colour
    )
      return fields.colour;
  }
  for (const item of room.items) {
    const cloth =
      item.record.kind === "wallpaper" ? (item.record.fields as { cloth: string }).cloth : null;
    if (cloth) return swatches.cloths.get(cloth)?.average ?? null;
  }
  return null;
}

function roomData(
  records: Records,
  room: FurnishedRoom,
  swatches: Swatches,
  language: string,
): { data: RoomData; diagnostics: readonly Diagnostic[] } {
  // An object's item has its card's name for a title; people read the card's own words.
  const seen = visibleAreas(room).map((part) =>
    part.kind === "object" && part.object
      ? {
          ...part,
          title: swatches.objects.get(part.object)?.name ?? part.title,
        }
      : part,
  );
  const scheme = roomScheme({
    room: room.plan.room,
    cloths: records.cloths,
    swatches: swatches.cloths,
    objects: swatches.objects,
    seen,
    contacts: room.plan.contacts,
    language,
  });
  const items = room.items.map(
    (item): ItemData => ({
      record: item.record,
      kind: item.kind,
      made: item.made,
      maker: item.maker,
      phase: (item.record.fields as { phase?: number }).phase ?? item.kind.phase,
    }),
  );
  return {
    data: {
      record: room.plan.room,
      plan: room.plan,
      scheme,
      items,
      wallColour: wallColour(room, swatches),
    },
    diagnostics: scheme.diagnostics,
  };
}

/** One project worked out from its records: rooms, quantities, scheme, money. */
function projectData(
  records: Records,
  studio: StudioRecord,
  project: ProjectRecord,
  swatches: Swatches,
  today: string,
): { data: ProjectData; diagnostics: readonly Diagnostic[] } {
  const lookUps = {
    cloth: (id: string) => {
      const card = records.cloths.get(id);
      return card ? clothFacts(card, swatches.cloths.get(id) ?? null) : null;
    },
    objectColours: (id: string) => (swatches.objects.get(id)?.colours ?? []).map((c) => c.hex),
  };
  const quantities = projectQuantities(records, project, ITEM_KINDS, lookUps);
  const rooms = quantities.rooms.map((room) =>
    roomData(records, room, swatches, studio.fields.language),
  );
  const money = projectMoney({
    records,
    studio,
    project,
    purchases: purchasesOf(project, quantities),
    items: pricedItemsOf(project, quantities, KINDS),
  });
  const data: ProjectData = {
    studio,
    records,
    project,
    rooms: rooms.map((r) => r.data),
    swatches: swatches.cloths,
    objects: swatches.objects,
    quantities,
    money,
    dated: project.fields.dated ?? today,
  };
  return {
    data,
    diagnostics: [
      ...quantities.diagnostics,
      ...rooms.flatMap((r) => r.diagnostics),
      ...money.diagnostics,
    ],
  };
}

function findingLines(all: readonly ProjectData[]): FindingLine[] {
  return all.flatMap((p) =>
    p.rooms.flatMap((r) =>
      r.scheme.findings.map(
        ({ room, code, level, message, reason, evidence, accepted, pasteLine }) => ({
          room,
          code,
          level,
          message,
          reason,
          evidence,
          accepted,
          pasteLine,
        }),
      ),
    ),
  );
}

/** The day of the build, as SOURCE_DATE_EPOCH says (reproducible-builds.org), else as the clock does. */
function buildDay(): string {
  const epoch = process.env.SOURCE_DATE_EPOCH;
  const now = epoch && /^\d{1,11}$/.test(epoch) ? new Date(Number(epoch) * 1000) : new Date();
  return now.toISOString().slice(0, 10);
}

function distinct(all: readonly Diagnostic[]): Diagnostic[] {
  const seen = new Set<string>();
  return all.filter((d) => {
    const key = [d.file, d.line, d.column, d.code, d.message].join("|");
    if (seen.has(key)) return false;
    seen.add(key);
    return true;
  });
}

/**
 * Reads, measures and computes a whole content folder. Bad content is diagnostics, never a throw; a project that an error stops gives
 * no pages, and so keeps the trees that it has.
 */
export async function compute(
  contentDir: string,
  options: {
    readonly only: string | null;
    readonly useCache: boolean;
    readonly onProgress?: (line: string) => void;
  },
): Promise<Computed> {
  const progress = options.onProgress ?? (() => {});
  progress("Reading the files");
  const content = await readContent(contentDir);
  const records = readRecords({
    files: content.files,
    present: content.present,
    problems: content.problems,
    items: ITEM_KINDS,
    findingCodes: FINDING_CODES,
  });
  const folder = options.useCache ? cacheSubfolder("measurements") : null;
  const swatches = await readSwatches(
    contentDir,
    records,
    folder ? openCache(folder) : NO_CACHE,
    progress,
  );
  const diagnostics: Diagnostic[] = [...records.diagnostics, ...swatches.diagnostics];
  const broken = new Set(records.stopped.map((s) => s.project));
  const worked: { data: ProjectData; warnings: readonly Diagnostic[] }[] = [];
  const { studio } = records;
  const today = buildDay();
  for (const project of records.projects) {
    if (project.id === ASSETS) {
      diagnostics.push(
        diagnostic(
          project.place([]),
          "project-name-taken",
          `A project's folder cannot be called ${ASSETS}.`,
          {
            hint: "The documents keep their style sheets and fonts under that name. Give the folder another one.",
          },
        ),
      );
      broken.add(project.id);
      continue;
    }
    if (studio === null || project.broken) continue;
    progress(`Working out ${project.fields.project}`);
    const { data, diagnostics: own } = projectData(records, studio, project, swatches, today);
    diagnostics.push(...own);
    const photos = usedCards(data).filter((path) => swatches.faulty.has(path));
    if (hasErrors(own) || photos.length > 0) broken.add(project.id);
    else
      worked.push({
        data,
        warnings: [...own, ...records.diagnostics.filter((d) => d.severity === "warning")],
      });
  }
  const ids = [
    ...new Set([...records.projects.map((p) => p.id), ...records.stopped.map((s) => s.project)]),
  ].sort();
  const pages = studio
    ? allPages(worked, [...broken].sort(), {
        name: studio.fields.studio,
        language: studio.fields.language,
        paper: studio.fields.paper,
      })
    : [];
  const all = worked.map((w) => w.data);
  const find = (target: string): { data: ProjectData; room: string | null } | null => {
    const [project, room] = target.split("/");
    const data = all.find((d) => d.project.id === project);
    return data ? { data, room: room ?? null } : null;
  };
  return {
    pages,
    files: [],
    diagnostics: distinct(diagnostics),
    projects: ids,
    brokenProjects: [...broken].sort(),
    studioBroken: studio === null,
    rooms: records.projects.flatMap((p) => p.rooms.map((r) => `${p.id}/${r.id}`)),
    issueDates: new Map(all.map((d) => [d.project.id, d.dated])),
    findings: findingLines(all),
    quantities(target): Report | null {
      const found = find(target);
      if (!found) return null;
      const shown = found.room
        ? roomQuantities(found.data.quantities, found.room)
        : found.data.quantities;
      return {
        json: quantitiesJson(shown),
        text: quantitiesText(shown, found.data.studio.fields.units),
      };
    },
    money(target): Report | null {
      const found = find(target);
      return found
        ? {
            json: moneyJson(found.data.money, found.room),
            text: moneyText(found.data.money, found.room, found.data.studio.fields.language),
          }
        : null;
    },
  };
}

/** Paths of the cards whose photographs a project's documents show. */
function usedCards(data: ProjectData): string[] {
  const cloths = data.rooms.flatMap((r) => r.scheme.roles.map((role) => role.cloth));
  const objects = data.rooms.flatMap((r) => [
    ...(r.record.fields.anchor ? [r.record.fields.anchor] : []),
    ...r.items.flatMap((i) =>
      i.record.kind === "object" ? [(i.record.fields as { object: string }).object] : [],
    ),
  ]);
  return [
    ...cloths.map((id) => data.records.cloths.get(id)?.path),
    ...objects.map((id) => data.records.objects.get(id)?.path),
  ].filter((p): p is string => p !== undefined);
}
