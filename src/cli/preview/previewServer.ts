import { createServer, type IncomingMessage, type ServerResponse } from "node:http";
import type { AddressInfo } from "node:net";
import type { Diagnostic } from "../../diagnostics/diagnostic.ts";
import { serveFile } from "../../press/outputOrigin.ts";
import { diagnosticsPage, errorBanner } from "./diagnosticsPage.ts";

/** What the preview shows at the moment. */
export interface Shown {
  /** Folder with the pages (a real path). */
  readonly root: string;
  /** Path of the page that `/` leads to, or null. */
  readonly start: string | null;
  readonly diagnostics: readonly Diagnostic[];
}

export interface PreviewServer {
  readonly port: number;
  /** Shows something else from now on, and has open pages load themselves again. */
  show(shown: Shown): void;
  close(): Promise<void>;
}

/** Our own addresses; no document's path starts with a dot. */
const CHANGES = "/.changes";
const ERRORS = "/.errors";
/** Reloads the page when the server says so, and when it is there again after an absence. */
const SCRIPT = `<script>(() => { const from = new EventSource("${CHANGES}"); let first = true;
from.addEventListener("edition", (event) => { if (first) { first = false; window.edition = event.data; }
else if (window.edition !== event.data) location.reload(); }); })()</script>`;

/**
 * Serves the preview on 127.0.0.1 only. Requests under another host's name are refused, so no web page
 * elsewhere can read a client's documents through a name that it points here. Rejects where the port
 * is taken.
 */
export async function startPreviewServer(port: number, first: Shown): Promise<PreviewServer> {
  let shown = first;
  let edition = 1;
  const listeners = new Set<ServerResponse>();
  const server = createServer((request, response) => {
    answer(request, response).catch(() => response.destroy());
  });
  const hosts = (): readonly string[] => {
    const { port: own } = server.address() as AddressInfo;
    return [`127.0.0.1:${own}`, `localhost:${own}`];
  };

  async function answer(request: IncomingMessage, response: ServerResponse): Promise<void> {
    if (!hosts().includes(request.headers.host ?? "")) return send(response, 403, "text/plain", "");
    if (request.method !== "GET" && request.method !== "HEAD") {
      return send(response, 405, "text/plain", "");
    }
    const url = new URL(request.url ?? "/", "http://127.0.0.1");
    if (url.pathname === CHANGES) return listen(response);
    if (url.pathname === "/" && shown.start !== null) {
      response.writeHead(302, {
        location: encodeURI(`/${shown.start}`),
        "cache-control": "no-store",
      });
      response.end();
      return;
    }
    const path = pathIn(url.pathname);
    const file =
      path === null || url.pathname === ERRORS
        ? null
        : ((await serveFile(shown.root, path)) ??
          (await serveFile(shown.root, `${path}/index.html`)));
    if (file === null) {
      const page = diagnosticsPage(shown.diagnostics, path ?? "");
      return send(response, 404, "text/html; charset=utf-8", withScript(page, ""));
    }
    if (!file.contentType.startsWith("text/html")) {
      return send(response, 200, file.contentType, file.body);
    }
    const banner = errorBanner(shown.diagnostics, ERRORS);
    send(response, 200, file.contentType, withScript(file.body.toString("utf8"), banner));
  }

  function listen(response: ServerResponse): void {
    response.writeHead(200, { "content-type": "text/event-stream", "cache-control": "no-store" });
    response.write(`retry: 500\nevent: edition\ndata: ${edition}\n\n`);
    listeners.add(response);
    response.on("close", () => listeners.delete(response));
  }

  await new Promise<void>((resolve, reject) => {
    server.once("error", reject);
    server.listen(port, "127.0.0.1", resolve);
  });
  return {
    port: (server.address() as AddressInfo).port,
    show(next) {
      shown = next;
      edition += 1;
      for (const response of listeners) response.write(`event: edition\ndata: ${edition}\n\n`);
    },
    close() {
      for (const response of listeners) response.end();
      server.closeAllConnections();
      return new Promise((resolve) => {
        server.close(() => resolve());
      });
    },
  };
}

function pathIn(pathname: string): string | null {
  try {
    const path = decodeURIComponent(pathname).replace(/^\/+|\/+$/g, "");
    const odd = path.includes("\0") || path.includes("\\") || path.split("/").includes("..");
    return odd || path === "" ? null : path;
  } catch {
    return null;
  }
}

function withScript(html: string, banner: string): string {
  const at = html.lastIndexOf("</body>");
  const end = at < 0 ? html.length : at;
  return `${html.slice(0, end)}${banner}${SCRIPT}${html.slice(end)}`;
}

function send(
  response: ServerResponse,
  status: number,
  contentType: string,
  body: string | Buffer,
): void {
  response.writeHead(status, {
    "content-type": contentType,
    "cache-control": "no-store",
    "x-content-type-options": "nosniff",
  });
  response.end(body);
}
