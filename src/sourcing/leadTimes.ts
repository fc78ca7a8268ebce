import type { ClothRecord, Records, StudioRecord } from "../records/records.ts";
import type { Duration } from "../units/duration.ts";

/** A line that is missing in a file, without which a date cannot be reckoned. */
export interface MissingLine {
  readonly file: string;
  /** The keys under which it belongs, outermost first: `suppliers`, `north-mill`. */
  readonly under: readonly string[];
  /** To paste; what only the studio knows stands as dots. */
  readonly line: string;
  /** Whose time it is, in the studio's words. */
  readonly of: string;
}

/** A missing line with what has no day for want of it. */
export type MissingFor = MissingLine & { readonly for: readonly string[] };

/** A time that is known, and what says it. */
export interface LeadTime {
  readonly span: Duration;
  /** Whose it is: a maker's or supplier's name, or the card's own. */
  readonly of: string;
}

export type FoundLead = { readonly lead: LeadTime } | { readonly missing: MissingLine };

/** The dots are to be replaced: a time is never guessed. */
const LINE = "lead: … weeks";

/** What is said of a maker or supplier: its `lead`, or whole weeks. */
function leadSaid(said: { readonly lead?: Duration; readonly weeks?: number }): Duration | null {
  const { lead, weeks } = said;
  if (lead || weeks === undefined) return lead ?? null;
  return { days: 7 * weeks, working: false, text: weeks === 1 ? "1 week" : `${weeks} weeks` };
}

/** How long a card's cloth takes: the card's own `lead`, else its supplier's. */
export function leadOfCloth(card: ClothRecord, studio: StudioRecord): FoundLead {
  const { supplier: key, cloth: name, lead } = card.fields;
  if (lead) return { lead: { span: lead, of: name } };
  return key !== undefined && studio.fields.suppliers?.[key]
    ? leadOfSupplier(key, studio)
    : { missing: { file: card.path, under: [], line: LINE, of: name } };
}

/** How long a supplier takes. */
export function leadOfSupplier(key: string, studio: StudioRecord): FoundLead {
  const supplier = studio.fields.suppliers?.[key];
  const span = supplier && leadSaid(supplier);
  if (supplier && span) return { lead: { span, of: supplier.name } };
  const of = supplier?.name ?? key;
  return { missing: { file: studio.path, under: ["suppliers", key], line: LINE, of } };
}

/** How long a maker takes. */
export function leadOfMaker(key: string, studio: StudioRecord): FoundLead {
  const maker = studio.fields.makers?.[key];
  const span = maker && leadSaid(maker);
  if (maker && span) return { lead: { span, of: maker.name } };
  return {
    missing: { file: studio.path, under: ["makers", key], line: LINE, of: maker?.name ?? key },
  };
}

/** True of a card whose sample the client approves: of a lining only where the card speaks of one. */
export function isSampled(card: ClothRecord): boolean {
  const { type, sample } = card.fields;
  return sample !== undefined || (type !== "lining" && type !== "interlining");
}

/** The cards of a project's needs that are bought, each once, in their order. */
export function boughtCards(
  needs: readonly { readonly cloth: string; readonly clientsOwn: boolean }[],
  records: Records,
): ClothRecord[] {
  const ids = new Set(needs.filter((n) => !n.clientsOwn).map((n) => n.cloth));
  return [...ids].flatMap((id) => records.cloths.get(id) ?? []);
}
