import { wordsIn } from "../units/spelling.ts";
import type { Finding } from "./finding.ts";
import { listed, percent } from "./findings/make.ts";
import type { RoomScheme } from "./roomScheme.ts";

/** What is otherwise in a room when something in it is changed. */
export interface SchemeChanges {
  /** For the client: facts, and what then works. */
  readonly client: readonly string[];
  /** For the studio alone: what is then to be looked at, and what no longer is. */
  readonly studio: readonly string[];
}

const key = (f: Finding): string => `${f.code} ${f.of.join(" ")}`;

/** Compares a room before and after a change: the cloth that leads, the plain share, the colours carried, the findings that come and go. */
export function schemeChanges(
  before: RoomScheme,
  after: RoomScheme,
  language: string,
): SchemeChanges {
  const say = wordsIn(language);
  const client: string[] = [];
  const lead = (scheme: RoomScheme): string | null =>
    scheme.roles.find((r) => r.role === "main")?.name ?? null;
  if (lead(after) !== lead(before))
    client.push(
      lead(after) === null ? say`No cloth leads then.` : say`${lead(after) ?? ""} leads then.`,
    );
  const share = (scheme: RoomScheme): string | null =>
    scheme.plainShare === null ? null : percent(scheme.plainShare);
  if (share(after) !== share(before) && share(after) && share(before))
    client.push(
      say`${share(after) ?? ""} of what is seen is plain, instead of ${share(before) ?? ""}.`,
    );
  const places = (scheme: RoomScheme): ReadonlyMap<string, number> =>
    new Map(scheme.carried.map((c) => [c.colour.name, c.items.length]));
  const was = places(before);
  const moved = [...places(after)].filter(([name, count]) => count !== (was.get(name) ?? 0));
  if (moved.length > 0)
    client.push(
      say`${listed(moved.map(([name, count]) => say`${name} is seen in ${count} ${count === 1 ? say`place` : say`places`} instead of ${was.get(name) ?? 0}`))}.`,
    );
  const said = (scheme: RoomScheme): ReadonlyMap<string, Finding> =>
    new Map(
      scheme.findings
        .filter((f) => f.level !== "works" && f.accepted === null)
        .map((f) => [key(f), f]),
    );
  const [old, now] = [said(before), said(after)];
  const come = [...now].filter(([k]) => !old.has(k)).map(([, f]) => say`New: ${f.message}`);
  const otherwise = [...now]
    .filter(([k, f]) => old.has(k) && old.get(k)?.message !== f.message)
    .map(([, f]) => say`Now: ${f.message}`);
  const gone = [...old].filter(([k]) => !now.has(k)).map(([, f]) => say`Gone: ${f.message}`);
  return { client, studio: [...come, ...otherwise, ...gone] };
}
