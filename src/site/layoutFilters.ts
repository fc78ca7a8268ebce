import nunjucks from "nunjucks";
import { proseMarkdown } from "./proseMarkdown.ts";

/**
 * The filters of the layouts, beside Nunjucks' own. `safe` is replaced: it prints only what a model
 * marked as markup, an object `{ html }`, so that no user's text can reach a page unescaped.
 */
export function addLayoutFilters(environment: nunjucks.Environment): void {
  const markdown = proseMarkdown();
  environment.addFilter("safe", (value: unknown) => {
    if (!isMarkup(value)) {
      throw new Error("`safe` prints only what the model marks as { html }");
    }
    return new nunjucks.runtime.SafeString(value.html);
  });
  environment.addFilter("markdown", (value: unknown) => {
    if (typeof value !== "string") throw new Error("`markdown` wants a text");
    return new nunjucks.runtime.SafeString(markdown.render(value));
  });
}

/** Markup that a model vouches for: a drawing's SVG, or Markdown that is rendered already. */
export interface Markup {
  readonly html: string;
}

function isMarkup(value: unknown): value is Markup {
  return (
    typeof value === "object" &&
    value !== null &&
    "html" in value &&
    typeof value.html === "string" &&
    Object.keys(value).length === 1
  );
}
