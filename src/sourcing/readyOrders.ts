import type { ProjectRecord } from "../records/records.ts";
import { openDaysOf } from "./closings.ts";
import { leadOfSupplier } from "./leadTimes.ts";
import { before } from "./openDays.ts";
import type { ScheduleInput } from "./scheduleTypes.ts";

/** What is bought ready from one supplier, and the last day on which it can be ordered for the fitting. */
export interface ReadyOrder {
  readonly on: string;
  /** The supplier's key in studio.md. */
  readonly supplier: string;
  /** What its pieces are called, each once. */
  readonly pieces: readonly string[];
}

/** Fields of an item that name what is bought ready for it. */
interface Buys {
  readonly object?: string;
  readonly hardware?: readonly { readonly what: string; readonly supplier?: string }[];
}

/**
 * When poles, tracks and objects that are bought must be ordered, so that they are there as early as what is made; the first comes first.
 * Only of suppliers whose time is written: files keep no orders of such pieces, so whether one was ordered is not known here.
 */
export function readyOrders(input: ScheduleInput, fitting: string): ReadyOrder[] {
  const { project, studio } = input;
  const { ready } = studio.fields.schedule ?? {};
  const there = ready ? before(fitting, ready, openDaysOf(studio)).on : fitting;
  const all = piecesOf(project, input);
  const suppliers = [...new Set(all.map((piece) => piece.supplier))];
  return suppliers
    .flatMap((supplier): ReadyOrder[] => {
      const lead = leadOfSupplier(supplier, studio);
      if (!lead) return [];
      const { on } = before(there, lead, openDaysOf(studio, { supplier }));
      const own = all.filter((piece) => piece.supplier === supplier).map((piece) => piece.what);
      return [{ on, supplier, pieces: [...new Set(own)] }];
    })
    .sort((a, b) => (a.on < b.on ? -1 : a.on > b.on ? 1 : 0));
}

function piecesOf(
  project: ProjectRecord,
  { records }: ScheduleInput,
): { readonly supplier: string; readonly what: string }[] {
  return project.rooms.flatMap((room) =>
    room.items.flatMap((item) => {
      const { object, hardware } = item.fields as Buys;
      const card = item.kind === "object" ? records.objects.get(object ?? "")?.fields : undefined;
      const bought = card?.price && card.owner !== "client" && card.supplier;
      return [
        ...(card && bought ? [{ supplier: bought, what: card.object }] : []),
        ...(hardware ?? []).flatMap(({ what, supplier }) => (supplier ? [{ supplier, what }] : [])),
      ];
    }),
  );
}
