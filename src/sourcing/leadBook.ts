import type { FoundLead, LeadTime, MissingFor, MissingLine } from "./leadTimes.ts";

/** Times as they are asked for: those that are known, each once, and those that are missing, with what has no day for want of them. */
export interface LeadBook {
  /** The time, or null where it is missing; `what` is what it is needed for. */
  readonly knows: (found: FoundLead, what: string) => LeadTime | null;
  readonly lacks: (line: MissingLine, what: string) => void;
  readonly found: () => {
    readonly times: readonly LeadTime[];
    readonly missing: readonly MissingFor[];
  };
}

export function leadBook(): LeadBook {
  const times = new Map<string, LeadTime>();
  const missing = new Map<string, MissingLine & { for: string[] }>();
  const lacks = (line: MissingLine, what: string): void => {
    const key = [line.file, ...line.under].join("\n");
    const known = missing.get(key) ?? { ...line, for: [] };
    missing.set(key, known);
    if (!known.for.includes(what)) known.for.push(what);
  };
  return {
    lacks,
    knows: (found, what) => {
      if ("missing" in found) {
        lacks(found.missing, what);
        return null;
      }
      times.set(found.lead.of, found.lead);
      return found.lead;
    },
    found: () => ({ times: [...times.values()], missing: [...missing.values()] }),
  };
}
