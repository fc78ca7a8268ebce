import { readContent } from "../cli/content/readContent.ts";
import { once } from "../cloth/once.ts";
import { type Diagnostic, diagnostic, hasErrors } from "../diagnostics/diagnostic.ts";
import { allPages } from "../documents/pages.ts";
import type { ProjectData } from "../documents/projectData.ts";
import { NO_CACHE, openCache } from "../images/cache.ts";
import { ITEM_KINDS } from "../items/kinds.ts";
import type { Alternative } from "../money/alternatives.ts";
import { type MoneyWords, moneyText } from "../money/moneyText.ts";
import { moneyJson } from "../money/toJson.ts";
import { cacheSubfolder } from "../press/cacheFolder.ts";
import { roomQuantities } from "../quantities/projectQuantities.ts";
import { itemsInRoom } from "../quantities/text/itemsCalled.ts";
import { quantitiesText } from "../quantities/text/quantitiesText.ts";
import { quantitiesJson } from "../quantities/text/toJson.ts";
import { readRecords } from "../records/readRecords.ts";
import { FINDING_CODES } from "../scheme/finding.ts";
import { schemeJson } from "../scheme/toJson.ts";
import { archivingOf } from "./archiving.ts";
import type { Computed, FindingLine, Report } from "./computed.ts";
import { readSentRecords } from "./readSent.ts";
import { readSwatches } from "./readSwatches.ts";
import { ASSETS } from "./treeAssets.ts";
import { projectData } from "./workOut.ts";

const LEVELS = ["problem", "worth-a-look", "works"] as const;

/** The findings room by room, what is to be mended first. */
function findingLines(all: readonly ProjectData[]): FindingLine[] {
  return all.flatMap((p) =>
    p.rooms.flatMap((r) =>
      [...r.scheme.findings]
        .sort((a, b) => LEVELS.indexOf(a.level) - LEVELS.indexOf(b.level))
        .map(({ room, code, level, message, reason, evidence, accepted, pasteLine }) => ({
          room,
          code,
          level,
          message,
          reason,
          evidence,
          accepted,
          pasteLine,
        })),
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
 * Reads and measures a whole content folder, and computes it or, with `only`, the one project that is named there or whose room is.
 * Bad content is diagnostics, never a throw; a project that an error stops gives no pages, and so keeps the trees that it has. Pages are
 * made when they are first asked for: reports need none.
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
  const sent = readSentRecords(content.sent);
  diagnostics.push(...sent.diagnostics);
  const broken = new Set(records.stopped.map((s) => s.project));
  const worked: { data: ProjectData; warnings: readonly Diagnostic[] }[] = [];
  const { studio } = records;
  const today = buildDay();
  const [only] = options.only?.split("/") ?? [];
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
    if (only !== undefined && project.id !== only) continue;
    progress(`Working out ${project.fields.project}`);
    const { data, diagnostics: own } = projectData(
      records,
      studio,
      project,
      swatches,
      today,
      sent.of(project.id),
    );
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
  const pages = once(() =>
    studio
      ? allPages(worked, [...broken].sort(), {
          name: studio.fields.studio,
          language: studio.fields.language,
          paper: studio.fields.paper,
        })
      : [],
  );
  const all = worked.map((w) => w.data);
  const find = (target: string): { data: ProjectData; room: string | null } | null => {
    const [project, room] = target.split("/");
    const data = all.find((d) => d.project.id === project);
    return data ? { data, room: room ?? null } : null;
  };
  const quantities = (target: string): Report | null => {
    const found = find(target);
    return found && quantitiesReport(found.data, found.room);
  };
  const money = (target: string): Report | null => {
    const found = find(target);
    return found && moneyReport(found.data, found.room);
  };
  return {
    get pages() {
      return pages();
    },
    files: [],
    diagnostics: distinct(diagnostics),
    projects: ids,
    brokenProjects: [...broken].sort(),
    studioBroken: studio === null,
    rooms: [
      ...records.projects.flatMap((p) => p.rooms.map((r) => `${p.id}/${r.id}`)),
      ...records.unreadRooms,
    ],
    issueDates: new Map(all.map((d) => [d.project.id, d.dated])),
    findings: findingLines(all),
    schemes: all.flatMap((d) =>
      d.rooms.map((r) => schemeJson(`${d.project.id}/${r.record.id}`, r.scheme)),
    ),
    quantities,
    money,
    sending(project) {
      const data = find(project)?.data;
      return data
        ? {
            state: data.state,
            sent: data.sent,
            place: data.project.place(["revision"]),
            language: data.studio.fields.language,
          }
        : null;
    },
    archiving(project) {
      const data = find(project)?.data;
      if (!data) return null;
      const [costs, needs] = [moneyReport(data, null), quantitiesReport(data, null)];
      return archivingOf(data, content, today, costs, needs);
    },
  };
}

/** What a project or one of its rooms needs to be bought and cut. */
function quantitiesReport(data: ProjectData, room: string | null): Report {
  const shown = room ? roomQuantities(data.quantities, room) : data.quantities;
  const { units, language } = data.studio.fields;
  return { json: quantitiesJson(shown), text: quantitiesText(shown, units, language) };
}

/** What a project or one of its rooms costs. */
function moneyReport(data: ProjectData, room: string | null): Report {
  const others = alternativesIn(data);
  return {
    json: moneyJson(data.money, room, others, data.account),
    text: moneyText(data.money, room, moneyWords(data), others, data.account),
  };
}

/** How the studio's text of prices writes sums, lengths and names. */
function moneyWords({ studio, quantities }: ProjectData): MoneyWords {
  const { language, units } = studio.fields;
  const rooms = new Map(quantities.rooms.map(({ plan }) => [plan.room.id, plan.room.fields.room]));
  return {
    language,
    units,
    item: itemsInRoom(quantities, language),
    room: (room) => rooms.get(room) ?? room,
    maker: (maker) => studio.fields.makers?.[maker]?.name ?? maker,
  };
}

/** Everything that is compared by the finished thing: the options of items, and cloths of whole rooms. */
function alternativesIn(data: ProjectData): Alternative[] {
  return [...data.choices.flatMap((c) => c.options.map((o) => o.priced)), ...data.compared];
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
