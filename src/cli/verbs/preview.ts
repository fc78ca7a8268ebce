import { rmSync } from "node:fs";
import { mkdtemp, realpath, rm, stat } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { type Diagnostic, diagnostic } from "../../diagnostics/diagnostic.ts";
import { reportText } from "../../diagnostics/report.ts";
import type { Page } from "../../documents/page.ts";
import { onSignal } from "../../press/onSignal.ts";
import type { Computed } from "../../site/computed.ts";
import { stagePages } from "../../site/stagePages.ts";
import { type ExitCode, UsageError } from "../outcome.ts";
import { paintFor } from "../paint.ts";
import { watchFolders } from "../preview/folderWatch.ts";
import { type PreviewServer, type Shown, startPreviewServer } from "../preview/previewServer.ts";
import type { Surroundings } from "../surroundings.ts";
import { holdsRoom, requireTarget, type Target } from "../target.ts";
import type { Wiring } from "../wiring.ts";

/**
 * Shows the pages on this machine and renews them with every change of the content or the layouts, also
 * deletions. Nothing is written to the output folder. A page that has errors gives way to what is wrong
 * and comes back when it is mended. With `only` one project is worked out, which a studio of many is quicker by. Ends when the user
 * asks.
 */
export async function preview(
  contentDir: string,
  port: number,
  wiring: Wiring,
  around: Surroundings,
  only: Target | null = null,
): Promise<ExitCode> {
  const home = await realpath(await mkdtemp(join(tmpdir(), "roomcloth-preview-")));
  const clear = (): void => rmSync(home, { recursive: true, force: true, maxRetries: 3 });
  const forget = onSignal(clear);
  let server: PreviewServer | null = null;
  try {
    // Watching starts before the first look, so that no change falls between the two.
    let stale = false;
    const watch = watchFolders([contentDir, wiring.layoutsDir], async () => {
      if (server === null) stale = true;
      else await renew(server);
    });
    let edition = 0;
    const look = async (): Promise<Shown> => {
      edition += 1;
      const shown = await lookOnce(contentDir, join(home, String(edition)), wiring, {
        only,
        isFirst: edition === 1,
      });
      if (shown.diagnostics.length > 0) {
        around.err.write(`${reportText(shown.diagnostics, paintFor(around.err, around.env))}\n`);
      }
      return shown;
    };
    let turn: Promise<void> = Promise.resolve();
    const renew = (to: PreviewServer): Promise<void> => {
      turn = turn.then(async () => {
        const old = edition;
        to.show(await look());
        await rm(join(home, String(old)), { recursive: true, force: true });
      });
      return turn;
    };
    let first: Shown;
    try {
      first = await look();
    } catch (error) {
      watch.stop();
      throw error;
    }
    try {
      server = await startPreviewServer(port, first);
    } catch (error) {
      watch.stop();
      around.err.write(
        `roomcloth: port ${port} cannot be used (${(error as NodeJS.ErrnoException).code}). Name another with --port.\n`,
      );
      return 3;
    }
    around.out.write(`http://127.0.0.1:${server.port}/${encodeURI(first.start ?? "")}\n`);
    if (stale) await renew(server);
    await around.ended;
    watch.stop();
    return 0;
  } finally {
    await server?.close();
    forget();
    clear();
  }
}

/** What is shown, and whether for the first time: then a project that is not there is a mistake of the command line. */
interface Look {
  readonly only: Target | null;
  readonly isFirst: boolean;
}

/** One edition of the preview in a folder of its own. Whatever goes wrong is shown, not thrown, but for the name of what is not there. */
async function lookOnce(
  contentDir: string,
  root: string,
  wiring: Wiring,
  { only, isFirst }: Look,
): Promise<Shown> {
  const diagnostics: Diagnostic[] = [];
  let start: string | null = null;
  try {
    const computed = await wiring.compute(contentDir, {
      only: only?.project ?? null,
      useCache: true,
    });
    if (only !== null && !computed.studioBroken) requireTarget(only, computed);
    diagnostics.push(...computed.diagnostics);
    const { pages } = computed;
    const staged = await stagePages(pages, computed.files, {
      contentDir,
      layoutsDir: wiring.layoutsDir,
      stagingDir: root,
      makePictures: wiring.makePictures,
      useCache: true,
      onProgress() {},
    });
    diagnostics.push(...staged.diagnostics);
    start = await startPage(contentDir, computed, only);
  } catch (error) {
    if (isFirst && error instanceof UsageError) throw error;
    const message = error instanceof Error ? error.message : String(error);
    const nowhere = { file: "", line: null, column: null, keyPath: null };
    diagnostics.push(diagnostic(nowhere, "preview", `The pages could not be made: ${message}`));
  }
  return { root, start, diagnostics };
}

/**
 * Where the preview opens: at the room whose file was saved last, its client's page first; without
 * rooms at any page. A room with errors opens all the same, at the place where its page would be.
 */
async function startPage(
  contentDir: string,
  computed: Computed,
  only: Target | null,
): Promise<string | null> {
  let latest: { room: string; time: number } | null = null;
  for (const room of computed.rooms.filter((each) => holdsRoom(only, each))) {
    const facts = await stat(join(contentDir, "projects", `${room}.md`)).catch(() => null);
    if (facts !== null && (latest === null || facts.mtimeMs > latest.time)) {
      latest = { room, time: facts.mtimeMs };
    }
  }
  const room = latest?.room ?? null;
  if (room !== null) {
    const own = computed.pages.filter((page) => page.room === room);
    return (firstFor("client", own) ?? own[0])?.path ?? `client/${room}/index.html`;
  }
  return (firstFor("studio", computed.pages) ?? computed.pages[0])?.path ?? null;
}

function firstFor(reader: Page["reader"], pages: readonly Page[]): Page | undefined {
  return pages.find((page) => page.reader === reader);
}
