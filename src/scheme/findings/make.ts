import type { RoomRecord } from "../../records/records.ts";
import { capital } from "../../units/capital.ts";
import { type Finding, type FindingCode, type Level, pasteLineFor } from "../finding.ts";

/** Builds a finding of a room; what works has no line to paste. */
export function finding(
  room: RoomRecord,
  code: FindingCode,
  level: Level,
  words: { readonly message: string; readonly reason: string },
  evidence: Finding["evidence"],
  of: readonly string[] = [],
  key: readonly (string | number)[] = ["cloths"],
): Finding {
  return {
    room: `${room.project}/${room.id}`,
    code,
    level,
    message: capital(words.message),
    reason: words.reason,
    evidence,
    of,
    accepted: null,
    pasteLine: level === "works" ? null : pasteLineFor(code, of),
    place: room.place(key),
  };
}

/** A share as a whole percentage for sentences. */
export function percent(share: number): string {
  return `${Math.round(share * 100)} %`;
}

/** `A`, `A and B`, `A, B and C`. */
export function listed(words: readonly string[]): string {
  return words.length < 2
    ? (words[0] ?? "")
    : `${words.slice(0, -1).join(", ")} and ${words.at(-1)}`;
}
