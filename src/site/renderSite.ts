import { cp, mkdir, mkdtemp, realpath, rm, stat } from "node:fs/promises";
import { tmpdir } from "node:os";
import { dirname, join, posix, resolve } from "node:path";
import { type Checked, type Diagnostic, diagnostic } from "../diagnostics/diagnostic.ts";
import type { Page } from "../documents/page.ts";
import { site } from "./site.ts";

export interface RenderSiteOptions {
  /** The studio's content folder; room files are read from it, nothing is written to it. */
  readonly contentDir: string;
  readonly layoutsDir: string;
  /** Folder that the pages are written to, each at its path. */
  readonly stagingDir: string;
  readonly pages: readonly Page[];
}

/** The paths of the pages that were written and of those whose layout failed. */
export interface RenderedSite {
  readonly written: readonly string[];
  readonly failed: readonly string[];
}

let queue: Promise<unknown> = Promise.resolve();

/**
 * Writes the pages' HTML into the staging folder through Eleventy. A layout that fails is a diagnostic
 * that names the layout and the page, and the page is not written; the others are. Calls wait for each
 * other: Eleventy works in the process's current folder. Rejects with the file system's errors.
 */
export function renderSite(options: RenderSiteOptions): Promise<Checked<RenderedSite>> {
  const run = queue.then(() => render(options));
  queue = run.catch(() => {});
  return run;
}

async function render(options: RenderSiteOptions): Promise<Checked<RenderedSite>> {
  requireDistinctPaths(options.pages);
  const contentDir = resolve(options.contentDir);
  const stagingDir = resolve(options.stagingDir);
  const layoutsDir = resolve(options.layoutsDir);
  await mkdir(stagingDir, { recursive: true });
  // Eleventy is shown only the room files that have pages, in a folder of their own: whatever else lies
  // in the content folder (a broken card, a script, an ignore file) cannot disturb it.
  const roomsRoot = await realpath(await mkdtemp(join(tmpdir(), "roomcloth-rooms-")));
  const before = process.cwd();
  const diagnostics: Diagnostic[] = [];
  const failed = new Set<string>();
  try {
    const rooms = await copyRooms(options.pages, contentDir, roomsRoot);
    const { default: Eleventy } = await import("@11ty/eleventy");
    process.chdir(roomsRoot);
    const eleventy = new Eleventy(".", stagingDir, {
      configPath: null,
      quietMode: true,
      loader: "esm",
      config: (config) =>
        config.addPlugin(site, {
          roomsRoot,
          layoutsDir,
          load: async () => options.pages,
          hasFile: (room) => rooms.has(room),
          onFault: (page, fault) => {
            failed.add(page.path);
            diagnostics.push(fault);
          },
        }),
    });
    await eleventy.init();
    eleventy.disableLogger();
    await eleventy.write();
  } catch (error) {
    const cause = causeOf(error);
    if ("syscall" in cause) throw cause;
    return { value: null, diagnostics: [...diagnostics, siteFailed(cause)] };
  } finally {
    process.chdir(before);
    await rm(roomsRoot, { recursive: true, force: true });
  }
  for (const path of failed) await rm(join(stagingDir, path), { force: true });
  const written = options.pages.map((page) => page.path).filter((path) => !failed.has(path));
  for (const path of written) {
    if ((await stat(join(stagingDir, path)).catch(() => null)) === null) {
      failed.add(path);
      diagnostics.push(siteFailed(new Error(`${path} was not written`)));
    }
  }
  return {
    value: {
      written: written.filter((path) => !failed.has(path)).sort(),
      failed: [...failed].sort(),
    },
    diagnostics: diagnostics.sort(byPlace),
  };
}

async function copyRooms(
  pages: readonly Page[],
  contentDir: string,
  roomsRoot: string,
): Promise<ReadonlySet<string>> {
  const rooms = new Set<string>();
  for (const room of new Set(pages.map((page) => page.room))) {
    if (room === null) continue;
    const file = join("projects", ...`${room}.md`.split("/"));
    const target = join(roomsRoot, file);
    await mkdir(dirname(target), { recursive: true });
    const copied = await cp(join(contentDir, file), target, {
      dereference: true,
    }).then(
      () => true,
      (error: NodeJS.ErrnoException) => {
        if (error.code === "ENOENT") return false;
        throw error;
      },
    );
    if (copied) rooms.add(room);
  }
  return rooms;
}

/** Paths come from our own documents, never from the user's words: a bad one is our mistake. */
function requireDistinctPaths(pages: readonly Page[]): void {
  const seen = new Set<string>();
  for (const { path } of pages) {
    const inside =
      posix.normalize(path) === path && !path.startsWith("/") && !/^\.|[\\:]/.test(path);
    if (!inside || path.split("/").includes("..")) throw new Error(`not a page's path: ${path}`);
    // Two names that differ by case alone are one file on macOS and Windows.
    const name = path.normalize("NFC").toLowerCase();
    if (seen.has(name)) throw new Error(`two pages have the path ${path}`);
    seen.add(name);
  }
}

/** Eleventy wraps what happened in errors of its own. */
function causeOf(error: unknown): Error {
  let cause = error as Error & { originalError?: Error };
  while (cause.originalError) cause = cause.originalError;
  return cause;
}

function siteFailed(cause: Error): Diagnostic {
  return diagnostic(
    { file: "", line: null, column: null, keyPath: null },
    "site",
    `The pages could not be written: ${cause.message.split("\n")[0]}`,
  );
}

function byPlace(a: Diagnostic, b: Diagnostic): number {
  const [left, right] = [a, b].map((one) => `${one.file}\0${one.message}`);
  return (left ?? "") < (right ?? "") ? -1 : 1;
}
