import { Argument } from "commander";
import { done } from "./command-result.ts";
import { bashCompletion } from "./completion/bash.ts";
import { typedPlaces } from "./completion/words.ts";
import { zshCompletion } from "./completion/zsh.ts";
import type { Registration } from "./registration.ts";

const SHELLS = { bash: bashCompletion, zsh: zshCompletion };

/** `warmside completion SHELL`: the script that lets a shell complete commands and options. */
export const registerCompletion: Registration = (program, run) => {
  program
    .command("completion")
    .addArgument(new Argument("<shell>", "for which shell").choices(Object.keys(SHELLS)))
    .summary("print a completion script for bash or zsh")
    .description("Prints a script by which bash or zsh completes commands, options and file names of warmside.")
    .addHelpText(
      "after",
      "\nExample:\n  source <(warmside completion bash)\nin ~/.bashrc, or for zsh in a folder of fpath:\n  warmside completion zsh > ~/.zsh/_warmside\n",
    )
    .action((shell: keyof typeof SHELLS) => run(() => done({ asIs: SHELLS[shell](typedPlaces(program)) })));
};
