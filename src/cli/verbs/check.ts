import { diagnosticJson } from "../../diagnostics/report.ts";
import type { FindingLine } from "../../site/computed.ts";
import { exitOf, type Outcome } from "../outcome.ts";
import { concerns, holdsRoom, requireTarget, type Target } from "../target.ts";
import type { Wiring } from "../wiring.ts";

const LEVELS: Readonly<Record<FindingLine["level"], string>> = {
  works: "works",
  "worth-a-look": "worth a look",
  problem: "problem",
};

function count(number: number, one: string): string {
  return `${number} ${one}${number === 1 ? "" : "s"}`;
}

/** A finding, its reason, and the line that overrules it, or her reason where she has done so. */
function findingText(one: FindingLine): string {
  const overruled = one.accepted === null ? null : `    Overruled: ${one.accepted}`;
  const paste = one.pasteLine === null ? null : `    To overrule it: ${one.pasteLine}`;
  const below = one.level === "works" ? overruled : (overruled ?? paste);
  return [
    `${one.room}: ${LEVELS[one.level]}: ${one.message}`,
    ...(one.reason === "" ? [] : [`    ${one.reason}`]),
    ...(below === null ? [] : [below]),
  ].join("\n");
}

/**
 * What is wrong with the content, and what the scheme finds; with `only` of one project or room and the cards. Findings never change
 * the exit status; nothing is written.
 */
export async function check(
  contentDir: string,
  wiring: Wiring,
  only: Target | null = null,
): Promise<Outcome> {
  const computed = await wiring.compute(contentDir, {
    only: only?.project ?? null,
    useCache: true,
  });
  if (only !== null && !computed.studioBroken) requireTarget(only, computed);
  const isWanted = ({ room }: { readonly room: string }) => holdsRoom(only, room);
  const diagnostics = computed.diagnostics.filter((one) => concerns(one, only, computed));
  const findings = computed.findings.filter(isWanted);
  const schemes = computed.schemes.filter(isWanted);
  const errors = diagnostics.filter((one) => one.severity === "error").length;
  const counts = [
    count(errors, "error"),
    count(diagnostics.length - errors, "warning"),
    count(findings.length, "finding"),
  ];
  return {
    exit: exitOf(diagnostics),
    json: { diagnostics: diagnostics.map(diagnosticJson), findings, rooms: schemes },
    text: [...findings.map(findingText), `${counts.join(", ")}.`].join("\n"),
    diagnostics,
  };
}
