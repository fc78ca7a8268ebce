import {
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { main } from "../../src/cli/main.ts";
import type { ExitCode } from "../../src/cli/outcome.ts";
import type { Wiring } from "../../src/cli/wiring.ts";
import { diagnostic } from "../../src/diagnostics/diagnostic.ts";
import type { Page } from "../../src/documents/page.ts";
import { findBrowser } from "../../src/press/findBrowser.ts";
import type { Computed } from "../../src/site/computed.ts";

/** What one command line wrote, and its exit status. */
export interface Said {
  readonly exit: ExitCode;
  readonly out: string;
  readonly err: string;
}

/**
 * A studio of the tests' own in a temporary folder: each room file `projects/<project>/<room>.md` gives
 * a client's page with a PDF and a maker's page; a room that holds the word BROKEN is an error, and so is
 * a `studio.md` that does.
 */
export function smallStudio(label: string) {
  const home = mkdtempSync(join(tmpdir(), `roomcloth-${label}-`));
  const content = join(home, "content");
  const out = join(home, "out");
  const put = (path: string, text: string): void => {
    const target = join(home, path);
    mkdirSync(dirname(target), { recursive: true });
    writeFileSync(target, text);
  };
  put(
    "layouts/documents/board.njk",
    `<!doctype html><html lang="{{ page.language }}"><head><meta charset="utf-8"><title>{{ page.title }}</title></head><body><h1>{{ model.name }}</h1>{{ body | safe }}</body></html>`,
  );
  put(
    "layouts/documents/index.njk",
    `<!doctype html><html lang="en"><body>{% for name in model.names %}<p>{{ name }}</p>{% endfor %}</body></html>`,
  );
  put("content/studio.md", "---\nstudio: X\n---\n");

  const wiring: Wiring = {
    compute: async (contentDir) => compute(contentDir),
    makePictures: async () => ({ value: { failed: [] }, diagnostics: [] }),
    starter: async (wanted) => ({ value: `# ${JSON.stringify(wanted)}\n`, diagnostics: [] }),
    findBrowser: () => findBrowser(),
    layoutsDir: join(home, "layouts"),
    pdfCache: () => join(home, "cache"),
  };
  return {
    home,
    content,
    out,
    put,
    wiring,
    room: (path: string, text: string): void =>
      put(`content/projects/${path}.md`, `---\nroom: ${path}\n---\n${text}\n`),
    /** All files of ours below the output folder with their text (PDFs by size), sorted by path. */
    made: (): Record<string, string> => filesIn(out),
    run: (args: readonly string[], more: Partial<Wiring> = {}, env: Record<string, string> = {}) =>
      say(["--content", content, "--out", out, ...args], { ...wiring, ...more }, env),
    remove: (): void => rmSync(home, { recursive: true, force: true }),
  };
}

/** Runs a command line and gathers what it says. */
export async function say(
  args: readonly string[],
  wiring: Wiring,
  env: Record<string, string> = {},
): Promise<Said> {
  const said = { out: "", err: "" };
  const stream = (key: "out" | "err") => ({
    write(text: string) {
      said[key] += text;
    },
  });
  const exit = await main(args, wiring, {
    out: stream("out"),
    err: stream("err"),
    env,
    ended: Promise.resolve(),
  });
  return { exit, ...said };
}

function filesIn(folder: string): Record<string, string> {
  const found: Record<string, string> = {};
  for (const entry of list(folder)) {
    const text = entry.endsWith(".pdf") ? "pdf" : readFileSync(join(folder, entry), "utf8");
    found[entry] = /<h1>.*<\/h1>(.*)/.exec(text)?.[1]?.replace(/<[^>]*>/g, "") ?? text;
  }
  return found;
}

function list(folder: string): readonly string[] {
  try {
    return readdirSync(folder, { recursive: true, encoding: "utf8" })
      .filter((path) => !path.startsWith(".roomcloth") && statSync(join(folder, path)).isFile())
      .sort();
  } catch {
    return [];
  }
}

function compute(contentDir: string): Computed {
  const rooms = list(join(contentDir, "projects"))
    .filter((path) => path.endsWith(".md") && !path.endsWith("/project.md"))
    .map((path) => path.slice(0, -3));
  const textOf = (path: string): string => readFileSync(join(contentDir, path), "utf8");
  const broken = rooms.filter((room) => textOf(`projects/${room}.md`).includes("BROKEN"));
  const projectOf = (room: string): string => room.split("/")[0] ?? "";
  const projects = [...new Set(rooms.map(projectOf))];
  const brokenProjects = [...new Set(broken.map(projectOf))];
  const studioBroken = textOf("studio.md").includes("BROKEN");
  const shared = { language: "en-US", paper: "a4", pictures: [] } as const;
  const pages = rooms
    .filter((room) => !brokenProjects.includes(projectOf(room)))
    .flatMap((room): Page[] => {
      const project = projectOf(room);
      const model = { kind: "board", name: room };
      const one = { ...shared, project, room, model, title: room };
      return [
        { ...one, reader: "client", path: `client/${room}/index.html`, pdf: true },
        { ...one, reader: "maker", path: `makers/workroom/${room}.html`, pdf: false },
      ];
    });
  const index: Page = {
    ...shared,
    reader: "studio",
    project: null,
    room: null,
    title: "Studio",
    path: "studio/index.html",
    pdf: false,
    model: { kind: "index", names: rooms },
  };
  const report = (target: string) =>
    brokenProjects.includes(projectOf(target)) ? null : { json: { target }, text: `of ${target}` };
  const fault = (file: string) =>
    diagnostic({ file, line: 4, column: 1, keyPath: null }, "test", "This is broken.", {
      hint: "Mend it.",
    });
  return {
    pages: studioBroken ? [] : [...pages, index],
    files: projects
      .filter((project) => !brokenProjects.includes(project))
      .map((project) => ({
        path: `client/${project}/style.css`,
        project,
        room: null,
        content: { text: "p{}" },
      })),
    diagnostics: [
      ...(studioBroken ? [fault("studio.md")] : []),
      ...broken.map((room) => fault(`projects/${room}.md`)),
    ],
    projects,
    brokenProjects,
    studioBroken,
    rooms,
    issueDates: new Map(projects.map((project) => [project, "2026-10-02"])),
    schemes: [],
    findings: rooms.map((room) => ({
      room,
      code: "rungs-close",
      level: "worth-a-look",
      message: "Two are close.",
      reason: "One of them is lost.",
      evidence: { ratio: 1.1 },
      accepted: null,
      pasteLine: "- { finding: rungs-close }",
    })),
    sending: () => null,
    archiving: () => null,
    quantities: report,
    money: report,
  };
}
