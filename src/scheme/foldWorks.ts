import { capital } from "../units/capital.ts";
import type { Finding, FindingCode } from "./finding.ts";
import { listed, percent } from "./findings/make.ts";

/** Several findings of one code that work, said in one sentence. */
export interface Folded {
  readonly code: FindingCode;
  readonly message: string;
  readonly reason: string;
  /** The findings that it stands for, at least one. */
  readonly findings: readonly Finding[];
}

type Say = (ours: TemplateStringsArray, ...theirs: readonly (string | number)[]) => string;

const number = (f: Finding, key: string): number => Number(f.evidence[key] ?? 0);
const word = (f: Finding, key: string): string => String(f.evidence[key] ?? "");

function carried(all: readonly Finding[], say: Say): string {
  const places = all.map((f) => number(f, "places"));
  const [least, most] = [Math.min(...places), Math.max(...places)];
  const many = least === most ? say`${least}` : say`${least} to ${most}`;
  return say`${capital(listed(all.map((f) => word(f, "colour"))))} are carried around the room, each in ${many} places.`;
}

function belonging(all: readonly Finding[], say: Say): string {
  const cloths = all.filter((f) => f.evidence.animal !== "yes");
  const animals = all.filter((f) => f.evidence.animal === "yes").map((f) => f.message);
  const least = Math.min(...cloths.map((f) => number(f, "cohesion")));
  const names = listed(cloths.map((f) => word(f, "cloth")));
  const own = (f: Finding): string => f.message;
  const said =
    cloths.length === 0
      ? []
      : cloths.length === 1
        ? cloths.map(own)
        : least > 0.995
          ? [say`${names} are wholly in the room's colours.`]
          : [say`${names} are in the room's colours, the least of them to ${percent(least)}.`];
  return [...said, ...animals].join(" ");
}

const SENTENCES: Partial<
  Readonly<Record<FindingCode, (all: readonly Finding[], say: Say) => string>>
> = { "colour-carried": carried, "cloth-belongs": belonging };

/**
 * Findings that work, folded: those of one code for which there is a common sentence become one, at the place of the first; all others
 * stand as they are, in their order. `say` spells our own words.
 */
export function foldWorks(findings: readonly Finding[], say: Say): Folded[] {
  const done = new Set<FindingCode>();
  return findings.flatMap((f): Folded[] => {
    const sentence = SENTENCES[f.code];
    const alone = { code: f.code, message: f.message, reason: f.reason, findings: [f] };
    if (!sentence) return [alone];
    if (done.has(f.code)) return [];
    done.add(f.code);
    const all = findings.filter((o) => o.code === f.code);
    return all.length === 1 ? [alone] : [{ ...alone, message: sentence(all, say), findings: all }];
  });
}
