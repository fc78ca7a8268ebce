import { isAbsolute, relative, resolve, sep } from "node:path";
import type { UserConfig } from "@11ty/eleventy";
import nunjucks from "nunjucks";
import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import type { Page } from "../documents/page.ts";
import { openLayouts } from "./layouts.ts";
import { proseMarkdown } from "./proseMarkdown.ts";

/** What the plugin is given: everything that depends on whose studio is built. */
export interface SiteOptions {
  /** Root of the room files that Eleventy reads, so that `projects/<project>/<room>.md` lies below it. */
  readonly roomsRoot: string;
  readonly layoutsDir: string;
  /** Computes all pages; called once before each build, also in Eleventy's watch. */
  load(): Promise<readonly Page[]>;
  /** Rooms (`project/room`) whose file Eleventy will read; pages of all others have no body. */
  hasFile(room: string): boolean;
  /** Called with each page whose layout failed; its file then holds nothing. */
  onFault(page: Page, fault: Diagnostic): void;
  /** Called after each build. */
  onDone?(output: string): void | Promise<void>;
}

/**
 * The Eleventy plugin. The whole studio is computed once before Eleventy renders; then each room file
 * passes through a data hook that gives it its documents, and its Markdown becomes their body. Pages
 * that belong to no room come from one template of the same data. Nothing that a user wrote in front
 * matter reaches the cascade: each page sees its own plain model, under `model`.
 */
export function site(config: UserConfig, options: SiteOptions): void {
  const rooms = new Map<string, Page[]>();
  const others: Page[] = [];
  let layouts = openLayouts(options.layoutsDir);
  config.on("eleventy.before", async () => {
    rooms.clear();
    others.length = 0;
    layouts = openLayouts(options.layoutsDir);
    for (const page of await options.load()) {
      if (page.room === null || !options.hasFile(page.room)) others.push(page);
      else rooms.set(page.room, [...(rooms.get(page.room) ?? []), page]);
    }
  });
  config.on("eleventy.after", ({ directories }) => options.onDone?.(resolve(directories.output)));

  // Content is Markdown only: no templates, no data files, nothing that runs.
  config.setTemplateFormats(["md"]);
  config.setDataFileSuffixes([]);
  config.setUseGitIgnore(false);
  config.setUseTemplateCache(false);
  config.setWatchJavaScriptDependencies(false);
  config.addWatchTarget(options.layoutsDir);
  config.setLibrary("md", proseMarkdown());

  // A new object each time: Eleventy adds to what it is given.
  const hook = (documents: string | readonly Page[]): Record<string, unknown> => ({
    documents,
    pagination: {
      data: typeof documents === "string" ? documents : "documents",
      size: 1,
      alias: "one",
    },
    layout: "page.njk",
    permalink: ({ one }: { one: Page }) => one.path,
    templateEngineOverride: "md",
    eleventyComputed: { model: ({ one }: { one?: Page }) => one?.model },
  });
  const engine = {
    parse(_text: string, { filePath }: { filePath: string }): Record<string, unknown> {
      const documents = rooms.get(roomOf(options.roomsRoot, resolve(filePath)) ?? "");
      return documents === undefined ? { permalink: false } : hook(documents);
    },
  };
  // Front matter in any language is only ever a key to the pages; `---js` would otherwise be run.
  const engines = Object.fromEntries(LANGUAGES.map((language) => [language, engine]));
  config.setFrontMatterParsingOptions({ engines });
  config.addGlobalData("permalink", false);
  config.addGlobalData("others", () => others);
  config.addTemplate("others.md", "", hook("others"));

  const document = (one: Page, content: string): string => {
    const rendered = layouts.render(one, content);
    if ("html" in rendered) return rendered.html;
    options.onFault(one, rendered.fault);
    return "";
  };
  // Layouts are rendered by an environment of our own, so Eleventy's holds nothing but the way to it.
  const shell = new nunjucks.Environment([], { autoescape: false });
  shell.addFilter("document", document);
  config.setLibrary("njk", shell);
  config.addTemplate("_includes/page.njk", "{{ one | document(content) }}");
}

const LANGUAGES = ["yaml", "yml", "json", "js", "javascript", "toml", "coffee", "cson"];

/** The room (`project/room`) that a file holds by its place, or null. */
export function roomOf(root: string, file: string): string | null {
  const inside = relative(root, file);
  if (isAbsolute(inside)) return null;
  const [projects, project, name, ...more] = inside.split(sep);
  if (projects !== "projects" || project === undefined || more.length > 0) return null;
  return name?.endsWith(".md") === true ? `${project}/${name.slice(0, -3)}` : null;
}
