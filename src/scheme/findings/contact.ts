import { isPlain, type Swatch } from "../../swatches/swatch.ts";
import type { Finding } from "../finding.ts";
import type { FindingInput } from "../findingInput.ts";
import { finding } from "./make.ts";

/** Two patterns may touch when their motifs differ by this many times; common practice, no source. */
const APART = 2.5;
/** Up to this distance at which it reads as a plain, a pattern is quiet: it is a texture to whoever is not near. Our own choice, no source. */
const QUIET_FROM_M = 1.5;

/** The patterned cloths of an item that are seen beside another: its welts are too narrow to count. */
function clothsOf(input: FindingInput, item: string): Swatch[] {
  const parts = input.seen.filter((s) => s.item === item && s.surface !== "welt");
  const ids = [
    ...new Set(parts.map((p) => p.cloth ?? p.object).filter((id): id is string => id !== null)),
  ];
  return ids
    .flatMap((id) => input.swatches.get(id) ?? input.objects.get(id) ?? [])
    .filter(
      (s) => !isPlain(s) && !(s.readsPlainFromM !== null && s.readsPlainFromM <= QUIET_FROM_M),
    );
}

function titleOf(input: FindingInput, item: string): string {
  return input.seen.find((s) => s.item === item)?.title ?? item;
}

/**
 * Busy patterns in contact, as `touches` says or as the items stand: two patterned cloths of near size. Not what a tradition puts
 * together, nor a `free` scheme.
 */
export function contactFindings(input: FindingInput): Finding[] {
  const { say } = input;
  if (input.room.fields.approach === "free") return [];
  const done = new Set<string>();
  return input.contacts.flatMap(({ one, other, stated }): Finding[] => {
    const key = [one, other].sort().join(" ");
    if (done.has(key)) return [];
    done.add(key);
    const pairs = clothsOf(input, one).flatMap((a) =>
      clothsOf(input, other).map((b) => [a, b] as const),
    );
    const clash = pairs.find(([a, b]) => {
      if (a.id === b.id || !a.motifMm || !b.motifMm) return false;
      if (input.traditions.together(a.id, b.id)) return false;
      return Math.max(a.motifMm, b.motifMm) / Math.min(a.motifMm, b.motifMm) < APART;
    });
    if (!clash) return [];
    const [a, b] = clash;
    return [
      finding(
        input.room,
        "patterns-touch",
        "worth-a-look",
        {
          message: say`${titleOf(input, one)} and ${titleOf(input, other)} touch, and ${a.name} and ${b.name} are both patterned in near sizes.`,
          reason: say`Two busy patterns in contact blur into one another unless their scale differs clearly (common practice). A plain welt or a plain cushion between them parts them.`,
        },
        {
          motifMm: a.motifMm ?? 0,
          otherMotifMm: b.motifMm ?? 0,
          knownFrom: stated ? "touches" : "placement",
        },
        [one, other],
        ["items"],
      ),
    ];
  });
}
