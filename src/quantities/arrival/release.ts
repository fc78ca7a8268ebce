import { type Diagnostic, diagnostic } from "../../diagnostics/diagnostic.ts";
import type { ProjectRecord } from "../../records/records.ts";
import type { ClothPlan, Release } from "../quantityTypes.ts";

export interface FoundRelease {
  readonly released: Release | null;
  readonly diagnostics: readonly Diagnostic[];
}

/**
 * The release that stands in the receipts of a plan's cloth. It is refused, and said at its line, while anything stands open, where
 * it is older than the cloth's coming, and where the plan is no longer the one that was released. Of several receipts any may carry it:
 * the release of this very plan counts, else the latest. Nobody is guessed.
 */
export function releaseOf(
  plan: Pick<ClothPlan, "notForCutting" | "number">,
  receipts: readonly number[],
  clothName: string,
  project: ProjectRecord,
): FoundRelease {
  const found = releasesIn(receipts, project);
  const [index, said] = found.find(([, each]) => isOf(each, plan.number)) ?? found.at(-1) ?? [];
  if (index === undefined || !said) return { released: null, diagnostics: [] };
  const at = (key: string) => project.place(["receipts", index, "released", key]);
  const warn = (key: string, code: string, message: string, hint: string): Diagnostic =>
    diagnostic(at(key), code, message, { severity: "warning", hint });
  const refused = (found: Diagnostic): FoundRelease => ({ released: null, diagnostics: [found] });
  if (plan.notForCutting.length > 0) {
    return refused(
      warn(
        "by",
        "release-refused",
        `${clothName} cannot be released to cut yet. ${plan.notForCutting.join(" ")}`,
        "Until that is settled its sheet says NOT FOR CUTTING. Settle it, look at the new sheet, and release that.",
      ),
    );
  }
  const all = receipts.flatMap((each) => project.fields.receipts?.[each] ?? []);
  const days = [
    ...all.flatMap(({ on }) => (on ? { day: on, words: "it came" } : [])),
    ...all.flatMap(({ washed }) => (washed ? { day: washed, words: "it was washed" } : [])),
  ];
  const last = days.sort((a, b) => a.day.localeCompare(b.day)).at(-1);
  if (last && said.on < last.day) {
    return refused(
      warn(
        "on",
        "release-before-receipt",
        `${clothName} was released on ${said.on}, before ${last.words} on ${last.day}.`,
        "A plan is released on the cloth as it came. Correct the date, or look at the sheet again and release that.",
      ),
    );
  }
  if (said.plan === undefined) {
    return {
      released: { by: said.by, on: said.on },
      diagnostics: [
        warn(
          "by",
          "release-without-number",
          `The release of ${clothName} does not say which plan was looked at.`,
          `Add plan: ${plan.number}, as printed on the sheet, so that a later change is noticed before anyone cuts.`,
        ),
      ],
    };
  }
  if (!isOf(said, plan.number)) {
    return refused(
      warn(
        "plan",
        "release-of-another-plan",
        `The plan of ${clothName} has changed since ${said.by} released it: it was ${said.plan}, it is ${plan.number}.`,
        `Its sheet says NOT FOR CUTTING again. If nothing is cut yet, look at the new sheet and write plan: ${plan.number}; if it is, undo the change.`,
      ),
    );
  }
  return { released: { by: said.by, on: said.on }, diagnostics: [] };
}

type Said = NonNullable<NonNullable<ProjectRecord["fields"]["receipts"]>[number]["released"]>;

/** The releases among a cloth's receipts, the latest last. */
function releasesIn(receipts: readonly number[], project: ProjectRecord): [number, Said][] {
  return receipts
    .flatMap((each): [number, Said][] => {
      const said = project.fields.receipts?.[each]?.released;
      return said ? [[each, said]] : [];
    })
    .sort(([, a], [, b]) => a.on.localeCompare(b.on));
}

function isOf(said: Said, number: string): boolean {
  return said.plan?.trim().toUpperCase() === number;
}
