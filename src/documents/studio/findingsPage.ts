import type { Diagnostic } from "../../diagnostics/diagnostic.ts";
import type { Finding } from "../../scheme/finding.ts";
import { issueWords } from "../board/board.ts";
import type { Page } from "../page.ts";
import { findingsPath, ordersPath, STUDIO_INDEX } from "../paths.ts";
import type { ProjectData } from "../projectData.ts";
import { wayTo } from "../ways.ts";
import { marked } from "../words/marks.ts";
import { runningWords } from "../words/pageStyle.ts";
import { capital } from "../words/phrases.ts";
import { boltWords, comparedRows, seenTables } from "./seenTables.ts";

const LEVEL_WORDS = {
  works: "Works",
  "worth-a-look": "Worth a look",
  problem: "Problem",
} as const;

function row(f: Finding) {
  return {
    code: f.code,
    message: f.message,
    reason: f.reason,
    accepted: f.accepted ?? "",
    paste: f.accepted === null ? (f.pasteLine ?? "") : "",
  };
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
      levels: (["problem", "worth-a-look", "works"] as const)
        .map((level) => ({
          words: LEVEL_WORDS[level],
          rows: room.scheme.findings.filter((f) => f.level === level).map(row),
        }))
        .filter((l) => l.rows.length > 0),
      seen: seenTables(room, studio.fields.language),
      items: room.items.map((item) => ({
        title: `${capital(item.kind.words[studio.fields.language as "en-US"].one)}: ${item.record.title}`,
        working: item.made.working.map((w) => ({
          what: w.what,
          sum: marked(w.sum),
          result: marked(w.result),
          rounded: w.rounded ?? "",
        })),
        questions: item.made.questions,
      })),
    })),
    compared: comparedRows(data),
    bolts: boltWords(data),
    cloths: data.quantities.cloths.map((c) => ({
      name: c.facts.name,
      working: c.working.map((w) => ({
        what: w.what,
        sum: marked(w.sum),
        result: marked(w.result),
        rounded: w.rounded ?? "",
      })),
      handbook: marked(c.handbookWords ?? ""),
      defaults: c.defaultsUsed.map((d) => `${d.what}: ${d.value} (${d.source})`),
    })),
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
