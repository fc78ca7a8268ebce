import type { Diagnostic } from "../../diagnostics/diagnostic.ts";
import { allowanceOrigins, type Origin, WRITTEN } from "../../quantities/origins.ts";
import { savingWords } from "../../quantities/savingWords.ts";
import type { Finding } from "../../scheme/finding.ts";
import { foldWorks } from "../../scheme/foldWorks.ts";
import { wordsIn } from "../../units/spelling.ts";
import { issueWords } from "../board/board.ts";
import type { Page } from "../page.ts";
import { findingsPath, ordersPath, STUDIO_INDEX } from "../paths.ts";
import type { ProjectData } from "../projectData.ts";
import { wayTo } from "../ways.ts";
import { type Markup, marked } from "../words/marks.ts";
import { runningWords } from "../words/pageStyle.ts";
import { capital } from "../words/phrases.ts";
import { evidenceWords } from "./evidenceWords.ts";
import { boltWords, comparedRows, seenTables } from "./seenTables.ts";

const LEVEL_WORDS = {
  "worth-a-look": "Worth a look",
  problem: "Problem",
} as const;

/** A finding with its numbers and the line that overrules it. */
function row(f: Finding, data: ProjectData) {
  const { units, language } = data.studio.fields;
  return {
    message: f.message,
    numbers: evidenceWords(f, units, language),
    accepted: f.accepted ?? "",
    paste: f.accepted === null ? (f.pasteLine?.trim() ?? "") : "",
  };
}

/** Findings of one level: those of one code and one reason together, the reason said once; those that she overruled come last. */
function groups(findings: readonly Finding[], data: ProjectData) {
  const keys = [...new Set(findings.map((f) => `${f.code} ${f.reason}`))];
  return keys
    .map((key) => {
      const own = findings.filter((f) => `${f.code} ${f.reason}` === key);
      const open = own.filter((f) => f.accepted === null);
      return {
        open: open.length > 0,
        reason: own[0]?.reason ?? "",
        rows: [...open, ...own.filter((f) => f.accepted !== null)].map((f) => row(f, data)),
      };
    })
    .sort((a, b) => Number(b.open) - Number(a.open));
}

/** What works, folded: a sentence, its reason, no numbers beside it. */
function works(findings: readonly Finding[], language: string) {
  const folded = foldWorks(
    findings.filter((f) => f.level === "works"),
    wordsIn(language),
  );
  return folded.map((f) => ({ message: f.message, reason: f.reason }));
}

/** How many problems and things worth a look are open, in words. */
function countWords(findings: readonly Finding[]): string {
  const open = (level: Finding["level"]): number =>
    findings.filter((f) => f.level === level && f.accepted === null).length;
  const [problems, looks] = [open("problem"), open("worth-a-look")];
  const said = [
    problems > 0 ? `${problems} ${problems === 1 ? "problem" : "problems"}` : "no problem",
    looks > 0 ? `${looks} worth a look` : "nothing worth a look",
  ];
  return `${capital(said.join(", "))}.`;
}

/** Origins under one head each: what the studio has set, what is only usual, and so on. */
function originLines(origins: readonly Origin[]): { from: string; lines: Markup[] }[] {
  const heads = [...new Set(origins.map((o) => o.from))];
  return heads.map((from) => ({
    from,
    lines: origins
      .filter((o) => o.from === from)
      .map((o) => marked(`${o.what}: ${o.value} (${o.source})`)),
  }));
}

/** What the tool would point out about a project, room by room, with the working of its quantities; for the studio alone. */
export function findingsPage(data: ProjectData, warnings: readonly Diagnostic[]): Page {
  const { project, studio } = data;
  const path = findingsPath(project.id);
  const model = {
    kind: "findings",
    style: runningWords(
      project.fields.project,
      `Findings, ${issueWords(data)}`,
      "For the studio alone",
    ),
    letter: studio.fields.paper === "a3" ? "a4-page" : "letter-page",
    project: project.fields.project,
    issue: issueWords(data),
    rooms: data.rooms.map((room) => ({
      name: capital(room.record.fields.room),
      count: countWords(room.scheme.findings),
      levels: (["problem", "worth-a-look"] as const)
        .map((level) => ({
          words: LEVEL_WORDS[level],
          groups: groups(
            room.scheme.findings.filter((f) => f.level === level),
            data,
          ),
        }))
        .filter((l) => l.groups.length > 0),
      works: works(room.scheme.findings, studio.fields.language),
      seen: seenTables(room, studio.fields.language, studio.fields.units),
      items: room.items.map((item) => ({
        title: `${capital(item.kind.words[studio.fields.language as "en-US"].one)}: ${item.record.title}`,
        working: item.made.working.map((w) => ({
          what: w.what,
          sum: marked(w.sum),
          result: marked(w.result),
          rounded: marked(w.rounded ?? ""),
        })),
        origins: originLines(
          allowanceOrigins(
            data.quantities.items.find(
              (i) => i.room === room.record.id && i.item === item.record.id,
            )?.allowances ?? [],
          ),
        ),
        questions: item.made.questions,
      })),
    })),
    compared: comparedRows(data),
    saving: savingWords(data.quantities.cloths, studio.fields.units),
    bolts: boltWords(data),
    cloths: data.quantities.cloths.map((c) => ({
      name: c.facts.name,
      working: c.working.map((w) => ({
        what: w.what,
        sum: marked(w.sum),
        result: marked(w.result),
        rounded: marked(w.rounded ?? ""),
      })),
      handbook: marked(c.handbookWords ?? ""),
      origins: originLines(c.origins),
    })),
    written: WRITTEN,
    warnings: warnings.map((w) => ({
      where: `${w.file}${w.line === null ? "" : `, line ${w.line}`}`,
      message: w.message,
      hint: w.hint ?? "",
    })),
    ways: [
      { href: wayTo(path, STUDIO_INDEX), text: "All projects" },
      { href: wayTo(path, ordersPath(project.id)), text: "Order list" },
    ],
  };
  return {
    reader: "studio",
    project: project.id,
    room: null,
    path,
    title: `${project.fields.project}: findings`,
    language: studio.fields.language,
    paper: studio.fields.paper === "a3" ? "a4" : "letter",
    pdf: true,
    model,
    pictures: [],
  };
}
