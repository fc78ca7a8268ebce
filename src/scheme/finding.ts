import type { Place } from "../diagnostics/diagnostic.ts";

/** On taste the levels are works and worth-a-look; problem is kept for fitness and safety. */
export type Level = "works" | "worth-a-look" | "problem";

/** Every code a finding can have; `accept` in a room file names one of these. */
export const FINDING_CODES = [
  "main-cloth",
  "no-main-cloth",
  "mains-compete",
  "tradition",
  "ladder-holds",
  "rungs-close",
  "plain-enough",
  "plain-short",
  "colour-carried",
  "colour-once",
  "colour-outside",
  "cloth-belongs",
  "strays-counted",
  "hues-few",
  "hues-many",
  "anchor-minor-first",
  "anchor-dominant-first",
  "prints-in-two-colours",
  "prints-in-one-colour",
  "accent-one",
  "accents",
  "collection-shared",
  "collection-apart",
  "collection-mixed",
  "patterns-touch",
  "light-and-dark",
  "one-light",
  "shares-level",
  "reads-plain",
  "main-reads-plain",
  "animal-marking",
  "not-suited",
  "rubs-low",
  "weight-unsuited",
  "light-low",
  "care-hard",
  "care-conflict",
  "layers-shrink-apart",
  "fire-unsaid",
  "corded",
  "rug-small",
  "picture-height",
  "price-old",
  "ready-unpriced",
  "card-and-photo-differ",
  "no-photograph",
  "photo-shows-part",
] as const;
export type FindingCode = (typeof FINDING_CODES)[number];

/** Codes whose findings no client reads, whatever a room publishes: they are of what the studio pays. */
export const STUDIO_ONLY: ReadonlySet<string> = new Set<FindingCode>(["ready-unpriced"]);

/** What a careful colleague would point out about a room: with numbers, a reason, and the line that waives it. */
export interface Finding {
  readonly room: string;
  readonly code: FindingCode;
  readonly level: Level;
  /** One sentence: what was found. */
  readonly message: string;
  /** Why it matters, and on whose authority: a source, or "common practice". */
  readonly reason: string;
  /** The numbers that it rests on, by name. */
  readonly evidence: Readonly<Record<string, number | string>>;
  /** What it is about: cloths, colours, items, by id. */
  readonly of: readonly string[];
  /** Her reason, where she overruled it. */
  readonly accepted: string | null;
  /** The exact line for `accept`, or null for what works. */
  readonly pasteLine: string | null;
  readonly place: Place;
}

/** A name as it can stand in a list of a file: in quotes where YAML would take a sign of it for its own (`#`, a comma, a colon). */
function written(name: string): string {
  return /^[\p{L}\p{N}][\p{L}\p{N} _-]*$/u.test(name) && name.trim() === name
    ? name
    : `"${name.replace(/["\\]/g, "\\$&")}"`;
}

/** The line that waives a finding, ready to paste under `accept:`. */
export function pasteLineFor(code: FindingCode, of: readonly string[]): string {
  const list = of.length > 0 ? `, of: [${of.map(written).join(", ")}]` : "";
  return `  - { finding: ${code}${list}, because: … }`;
}
