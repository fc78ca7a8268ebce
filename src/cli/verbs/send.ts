import { join } from "node:path";
import { type Diagnostic, diagnostic } from "../../diagnostics/diagnostic.ts";
import { diagnosticJson } from "../../diagnostics/report.ts";
import { writeAtomically } from "../../images/writeAtomically.ts";
import { nextRevision } from "../../revisions/nextRevision.ts";
import { isSame, type SentRevision, writeSent } from "../../revisions/sentRevision.ts";
import type { Sending } from "../../site/computed.ts";
import { sentPath } from "../../site/readSent.ts";
import { small } from "../../units/capital.ts";
import { money, printMoney } from "../../units/money.ts";
import { isThere } from "../isThere.ts";
import { machineFault } from "../machineFault.ts";
import { exitOf, type Outcome, UsageError } from "../outcome.ts";
import { concerns, requireTarget, type Target } from "../target.ts";
import type { Wiring } from "../wiring.ts";

/** A revision that may be a file's name. */
const NAME = /^[\p{L}\p{N}][\p{L}\p{N} ._-]*$/u;

/**
 * Records what a client's proposal says now as sent, in the project's folder, so that the next one can say what has changed. A record
 * is never written over: what was sent stays what was sent.
 */
export async function send(
  contentDir: string,
  outDir: string,
  target: Target,
  wiring: Wiring,
): Promise<Outcome> {
  if (target.room !== null) throw new UsageError("A proposal is a whole project's: name no room.");
  const computed = await wiring.compute(contentDir, { only: target.project, useCache: true });
  if (!computed.studioBroken) requireTarget(target, computed);
  const diagnostics = computed.diagnostics.filter((one) => concerns(one, target, computed));
  const sending = computed.sending(target.project);
  if (sending === null) {
    return { exit: exitOf(diagnostics) || 1, json: null, text: "", diagnostics };
  }
  const { state } = sending;
  const known = sending.sent.find((each) => each.revision === state.revision);
  if (known && isSame(known, state)) {
    const text = `Revision ${known.revision} is recorded already, as sent on ${known.sent}. Nothing has changed since.`;
    return outcome(known, false, text, diagnostics);
  }
  const path = sentPath(target.project, state.revision);
  const fault = faultOf(sending, known, await isThere(join(contentDir, path)), path);
  if (fault) return outcome(null, false, "", [...diagnostics, fault]);
  try {
    await writeAtomically(join(contentDir, path), writeSent(state));
  } catch (error) {
    const machine = machineFault(error);
    if (machine === null) throw error;
    return outcome(null, false, "", [...diagnostics, machine]);
  }
  const proposal = join(outDir, "client", target.project, "proposal.pdf");
  const where = (await isThere(proposal))
    ? `The proposal is ${proposal}; build it again if anything was changed since it was made.`
    : "There is no printed proposal yet: build it before you send it.";
  const text = `Recorded revision ${state.revision} as sent on ${state.sent}: ${sumOf(state, sending.language)}. It is kept as ${path}.\n${where}`;
  return outcome(state, true, text, diagnostics);
}

/** The total in words; while a price is still to come it is not the whole. */
function sumOf({ totalMinor, currency, items, others }: SentRevision, language: string): string {
  const sum = printMoney(money(totalMinor, currency), language);
  return [...items, ...others].some(({ open }) => open)
    ? `${sum} so far, prices still to come`
    : sum;
}

/** Why a state cannot be recorded; null where it can. */
function faultOf(
  { state, place, language }: Sending,
  known: SentRevision | undefined,
  isTaken: boolean,
  path: string,
): Diagnostic | null {
  const { revision } = state;
  if (revision === "")
    return diagnostic(
      place,
      "revision-missing",
      "What is sent needs a name, and the project has no revision.",
      {
        hint: "Write for example revision: A, build, and send that.",
      },
    );
  if (!NAME.test(revision))
    return diagnostic(place, "revision-unnameable", `A file cannot be called “${revision}”.`, {
      actual: revision,
      hint: "Write a letter or a number: revision: B.",
    });
  const next = nextRevision(revision);
  const hint = `Write ${next ? `revision: ${next}` : "the next revision"}, build, and send that.`;
  if (known)
    return diagnostic(
      place,
      "revision-sent",
      `Revision ${revision} was sent on ${known.sent}, at ${sumOf(known, language)}, and has been changed since: it comes to ${sumOf(state, language)} now.`,
      { actual: revision, hint },
    );
  if (!isTaken) return null;
  return diagnostic(
    place,
    "revision-sent",
    `${path} is there already, and cannot be read as what was sent.`,
    {
      actual: revision,
      hint: `Put it back as it was, or move it away. Or ${small(hint)}`,
    },
  );
}

function outcome(
  record: SentRevision | null,
  recorded: boolean,
  text: string,
  diagnostics: readonly Diagnostic[],
): Outcome {
  return {
    exit: exitOf(diagnostics),
    json: { recorded, record, diagnostics: diagnostics.map(diagnosticJson) },
    text,
    diagnostics,
  };
}
