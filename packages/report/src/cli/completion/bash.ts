import type { TypedPlace } from "./words.ts";

/**
 * The completion script for bash.
 *
 * @param places - what can be typed where
 * @returns a script to be sourced
 */
export function bashCompletion(places: readonly TypedPlace[]): string {
  const commands = places.filter(({ path }) => path !== "").map(({ path }) => `"${path}"`);
  return `# Completion of warmside for bash; in ~/.bashrc:  source <(warmside completion bash)
_warmside() {
  local word=\${COMP_WORDS[COMP_CWORD]} before=\${COMP_WORDS[COMP_CWORD-1]}
  local command="" words="" files="" index match
  for ((index = 1; index < COMP_CWORD; index++)); do
    match="\${command:+$command }\${COMP_WORDS[index]}"
    case $match in
      ${commands.join("|")}) command=$match ;;
    esac
  done
  case "$command $before" in
${places.flatMap(valuedCases).join("\n")}
    *)
      case $command in
${places.map(placeCase).join("\n")}
      esac ;;
  esac
  COMPREPLY=()
  while IFS= read -r match; do COMPREPLY+=("$match"); done < <(compgen -W "$words" -- "$word")
  if [[ -n $files ]]; then
    compopt -o filenames 2>/dev/null
    while IFS= read -r match; do COMPREPLY+=("$match"); done < <(compgen -f -- "$word")
  fi
}
complete -F _warmside warmside
`;
}

function valuedCases({ path, valued }: TypedPlace): string[] {
  return valued.map(({ flag, choices }) => {
    const then = choices === null ? "files=yes" : `words="${choices.join(" ")}"`;
    return `    "${path} ${flag}") ${then} ;;`;
  });
}

function placeCase({ path, words, takesFile }: TypedPlace): string {
  return `        "${path}") words="${words.join(" ")}"${takesFile ? " files=yes" : ""} ;;`;
}
