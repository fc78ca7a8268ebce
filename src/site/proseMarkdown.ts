import markdownIt, { type MarkdownIt } from "markdown-it";

/**
 * The Markdown of room files and notes: CommonMark without HTML, so that tags and braces stay text;
 * a picture gives its words only, since a document shows just those that its model names; and no
 * "smart" punctuation, which would turn inch and foot marks into quotation marks.
 */
export function proseMarkdown(): MarkdownIt {
  const markdown = markdownIt("commonmark", {
    html: false,
    linkify: false,
    typographer: false,
  });
  markdown.renderer.rules.image = (tokens, at) =>
    markdown.utils.escapeHtml(tokens[at]?.content ?? "");
  return markdown;
}
