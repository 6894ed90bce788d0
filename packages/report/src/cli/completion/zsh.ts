import type { TypedPlace } from "./words.ts";

/**
 * The completion script for zsh.
 *
 * @param places - what can be typed where
 * @returns the text of a file named _warmside in a folder of fpath
 */
export function zshCompletion(places: readonly TypedPlace[]): string {
  const commands = places.filter(({ path }) => path !== "").map(({ path }) => `"${path}"`);
  return `#compdef warmside
# Completion of warmside for zsh; save it as _warmside in a folder of fpath.
_warmside() {
  local command="" match index
  for ((index = 2; index < CURRENT; index++)); do
    match="\${command:+$command }\${words[index]}"
    case $match in
      ${commands.join("|")}) command=$match ;;
    esac
  done
  case "$command \${words[CURRENT-1]}" in
${places.flatMap(valuedCases).join("\n")}
    *)
      case $command in
${places.map(placeCase).join("\n")}
      esac ;;
  esac
}
if [[ $funcstack[1] == _warmside ]]; then _warmside "$@"; else compdef _warmside warmside; fi
`;
}

function valuedCases({ path, valued }: TypedPlace): string[] {
  return valued.map(({ flag, choices }) => {
    const then = choices === null ? "_files" : `compadd -- ${choices.join(" ")}`;
    return `    "${path} ${flag}") ${then} ;;`;
  });
}

function placeCase({ path, words, takesFile }: TypedPlace): string {
  return `        "${path}") compadd -- ${words.join(" ")}${takesFile ? "; _files" : ""} ;;`;
}
