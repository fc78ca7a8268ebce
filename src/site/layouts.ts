import { posix, relative } from "node:path";
import nunjucks from "nunjucks";
import { type Diagnostic, diagnostic } from "../diagnostics/diagnostic.ts";
import type { Page } from "../documents/page.ts";
import { addLayoutFilters } from "./layoutFilters.ts";
import { strictView } from "./strictView.ts";
import { handoverRoot } from "./treeOf.ts";

/** A rendered page, or why it could not be. */
export type Rendered = { readonly html: string } | { readonly fault: Diagnostic };

/** Renders pages by `documents/<kind>.njk` below the layouts folder. */
export interface Layouts {
  /** `body` is the page's Markdown as HTML, or empty. */
  render(page: Page, body: string): Rendered;
}

/**
 * The layouts of a folder, read anew: nothing is kept from an earlier build. A layout sees `model`,
 * `body` (markup) and `page`: title, language, paper, path, and `tree`, the way from the page up to the
 * root of the tree that is handed over with it, for links to what all its pages share.
 */
export function openLayouts(layoutsDir: string): Layouts {
  const environment = new nunjucks.Environment(new nunjucks.FileSystemLoader(layoutsDir), {
    autoescape: true,
    throwOnUndefined: true,
    trimBlocks: true,
    lstripBlocks: true,
  });
  addLayoutFilters(environment);
  return {
    render(page, body) {
      const layout = `documents/${page.model.kind}.njk`;
      try {
        const html = environment.render(layout, {
          model: strictView(page.model, "model"),
          body: { html: body },
          page: strictView(
            {
              title: page.title,
              language: page.language,
              paper: page.paper,
              path: page.path,
              tree: wayUp(page.path),
            },
            "page",
          ),
        });
        return { html };
      } catch (error) {
        return { fault: layoutFault(page, layout, error, layoutsDir) };
      }
    },
  };
}

/** From a page to the root of its tree, for example `../`, or `./` where it lies there. */
export function wayUp(path: string): string {
  const way = posix.relative(posix.dirname(path), handoverRoot(path));
  return way === "" ? "./" : `${way}/`;
}

/** Nunjucks names the file in brackets, `(documents/board.njk) [Line 3, Column 5]`, then what was wrong. */
function layoutFault(page: Page, layout: string, error: unknown, layoutsDir: string): Diagnostic {
  const text = error instanceof Error ? error.message : String(error);
  const where = /\[Line (\d+), Column (\d+)\]/.exec(text);
  const named = /^[^(\n]*\((.+)\)(?: \[Line.*)?$/m.exec(text)?.[1];
  const file = named === undefined || named === "unknown path" ? layout : inside(layoutsDir, named);
  const reason = text
    .split("\n")
    .map((line) => line.trim())
    .filter((line) => line !== "" && !/^[^(]*\(.+\)(?: \[Line.*\])?$/.test(line))
    .join(" ")
    .replace(/^(?:Template render error|Error):\s*/, "");
  return diagnostic(
    {
      file: `layouts/${file}`,
      line: where?.[1] === undefined ? null : Number(where[1]),
      column: where?.[2] === undefined ? null : Number(where[2]),
      keyPath: null,
    },
    "layout",
    `The layout layouts/${layout} cannot show the page ${page.path}: ${reason}.`,
    {
      actual: page.path,
      hint: "Mend the layout, or what it includes at or just after this place; content files are not the cause.",
    },
  );
}

function inside(layoutsDir: string, named: string): string {
  return named.startsWith(layoutsDir)
    ? relative(layoutsDir, named).split("\\").join("/")
    : named.split("\\").join("/");
}
