import { createHash } from "node:crypto";
import {
  mkdirSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
  utimesSync,
} from "node:fs";
import { dirname, join } from "node:path";
import { pathToFileURL } from "node:url";

/** A bundle is kept for so long after its last start: a program that runs may still load parts of it. */
const KEPT_MS = 7 * 24 * 3_600_000;

/**
 * The program in a few plain files, made from the sources when it is first started and again when one of them has changed: to load a
 * thousand small ones takes three times as long. It lies below `node_modules`, so that packages are found from it.
 * @param {string} root The program's own folder.
 * @returns {Promise<string | null>} Path of the module that exports `start`; null where nothing can be kept there.
 */
export async function bundled(root) {
  try {
    const home = join(root, "node_modules", ".cache", "roomcloth");
    const folder = join(home, fingerprint(root));
    const entry = join(folder, "start.js");
    if (statSync(entry, { throwIfNoEntry: false }) === undefined) await make(root, home, folder);
    else noteStart(folder);
    return entry;
  } catch {
    return null;
  }
}

/** @param {string} folder */
function noteStart(folder) {
  try {
    utimesSync(folder, new Date(), new Date());
  } catch {
    // Of a folder that is somebody else's the last start is not known; that keeps nobody from starting.
  }
}

/**
 * Changes when a source file does, by its size and its time, or when the folder is another: paths in it are whole.
 * @param {string} root
 */
function fingerprint(root) {
  const hash = createHash("sha256").update(`${root}\n${process.version}\n`);
  const sources = join(root, "src");
  const files = readdirSync(sources, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name))
    .sort();
  for (const file of files) {
    const { size, mtimeMs } = statSync(file);
    hash.update(`${file} ${size} ${mtimeMs}\n`);
  }
  return hash.digest("hex").slice(0, 24);
}

/**
 * @param {string} root
 * @param {string} home
 * @param {string} folder
 */
async function make(root, home, folder) {
  const { build } = await import("esbuild");
  const own = `${folder}.${process.pid}`;
  mkdirSync(home, { recursive: true });
  try {
    await build({
      entryPoints: [join(root, "src", "cli", "start.ts")],
      outdir: own,
      bundle: true,
      splitting: true,
      packages: "external",
      format: "esm",
      platform: "node",
      target: "node20",
      logLevel: "silent",
      plugins: [{ name: "own-places", setup: keepPlaces }],
    });
    // In one step: another start may make the same at the same time, and the first wins.
    renameSync(own, folder);
  } catch (error) {
    rmSync(own, { recursive: true, force: true });
    if (statSync(folder, { throwIfNoEntry: false }) === undefined) throw error;
  }
  for (const name of readdirSync(home)) {
    const other = join(home, name);
    // Another start may have taken it away already.
    const { mtimeMs = Date.now() } = statSync(other, { throwIfNoEntry: false }) ?? {};
    if (Date.now() - mtimeMs > KEPT_MS) rmSync(other, { recursive: true, force: true });
  }
}

/**
 * A source file that asks where it lies is told its own place, not that of the bundle.
 * @param {import("esbuild").PluginBuild} build
 */
function keepPlaces(build) {
  build.onLoad({ filter: /\.ts$/ }, ({ path }) => {
    const text = readFileSync(path, "utf8");
    if (!text.includes("import.meta")) return null;
    const contents = text
      .replaceAll("import.meta.dirname", JSON.stringify(dirname(path)))
      .replaceAll("import.meta.url", JSON.stringify(pathToFileURL(path).href));
    return { contents, loader: "ts" };
  });
}
