import type { Command } from "commander";

/** What a command is given after its name, in words; what is not here is called by its own name. */
const GIVEN: Readonly<Record<string, string>> = {
  project: "the project's name",
  "project[/room]": "a project's name, or a room's as project/room",
  title: "its title",
  cloth: "the name of a cloth's card",
  photo: "the file of a photograph",
  bag: "the folder of an archive",
  kind: "the kind of item, such as curtains or cushion",
  dir: "the name of its folder",
};

/** `new room`, without the program's own name. */
function nameOf(command: Command): string {
  const above = command.parent;
  return above?.parent ? `${nameOf(above)} ${command.name()}` : command.name();
}

/** `quantities <project[/room]>` */
function pattern(command: Command): string {
  const given = command.registeredArguments.map((arg) =>
    arg.required ? `<${arg.name()}>` : `[${arg.name()}]`,
  );
  return [nameOf(command), ...given].join(" ");
}

/** A name of several words that was typed without its quotes, or a room that was typed after its project without the slash. */
function tooMany(command: Command): string {
  const takes = command.registeredArguments;
  const last = takes.at(-1)?.name() ?? "";
  const { args } = command;
  const name = nameOf(command);
  if (takes.length === 0) return `Nothing comes after ${name}, but its options.`;
  const words = args.slice(takes.length - 1);
  const stays = [name, ...args.slice(0, takes.length - 1)].join(" ");
  const measure = words.slice(1).find((word) => /^\d/.test(word));
  const option = command.options.find(({ flags }) => flags.endsWith("<length>"));
  if (measure !== undefined && option)
    return `${name} takes fewer words than these. A measure stands behind its option: ${stays} ${words[0]} ${option.long} ${measure}`;
  const how = last.endsWith("[/room]")
    ? `A room stands behind its project with a slash: ${name} ${words.slice(0, 2).join("/")}`
    : `A name of several words stands in quotes: ${stays} "${words.join(" ")}"`;
  return `${name} takes fewer words than these. ${how}`;
}

/**
 * What the reader of the command line complains of, in the words of the other messages: what is missing or too much, and how it should
 * read. Text that is none of its known complaints comes back as it is.
 */
export function usageWords(text: string, command: Command): string {
  const [, missing] = /^error: missing required argument '(.+)'/.exec(text) ?? [];
  if (missing !== undefined)
    return `roomcloth: After ${nameOf(command)} comes ${GIVEN[missing] ?? missing}: ${pattern(command)}\n`;
  if (text.startsWith("error: too many arguments")) return `roomcloth: ${tooMany(command)}\n`;
  const [, what, name, near] =
    /^error: unknown (command|option) '(.+?)'(?:\s*\(Did you mean (?:one of )?(.+?)\?\))?\s*$/s.exec(
      text,
    ) ?? [];
  if (name === undefined) return text;
  const all = `roomcloth ${what === "command" ? "" : `${nameOf(command)} `}--help lists them all.`;
  return `roomcloth: There is no ${what} ${name}. ${near ? `Did you mean ${near}?` : all}\n`;
}
