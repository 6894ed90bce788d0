import { answerTo, type Beside, type Question, type Reply } from "./work.ts";

/** What runs beside the page: in a worker made of the page's own script, or here where none can be had. */
interface Helper {
  send: (question: Question) => void;
}

let helper: Helper | null = null;
let script = "";
let lastId = 0;
let latestBeside = 0;
let quiet: ReturnType<typeof setTimeout> | undefined;
const waiting = new Map<number, (reply: Reply) => void>();

/** Says what a worker is to be made of. */
export function helpFrom(ownScript: string): void {
  script = ownScript;
}

/**
 * Asks for what stands beside the answer, once nothing has changed for a moment; only the latest answer is handed on.
 *
 * @param question - what to work out
 * @param hand - takes the answer
 */
export function askBeside(question: Omit<Question, "id" | "kind">, hand: (beside: Beside) => void): void {
  clearTimeout(quiet);
  const id = nextId();
  latestBeside = id;
  quiet = setTimeout(() => {
    send({ ...question, id, kind: "beside" }, (reply) => {
      if (id === latestBeside && "beside" in reply) hand(reply.beside);
    });
  }, QUIET);
}

/** Asks for a file: the report, or the figures as JSON. */
export function askForFile(question: Omit<Question, "id">): Promise<string> {
  return new Promise((resolve, reject) => {
    send({ ...question, id: nextId() }, (reply) => {
      if ("file" in reply) resolve(reply.file);
      else reject(new Error("fault" in reply ? reply.fault : "no file came"));
    });
  });
}

function send(question: Question, then: (reply: Reply) => void): void {
  waiting.set(question.id, then);
  helper ??= makeHelper();
  helper.send(question);
}

function receive(reply: Reply): void {
  waiting.get(reply.id)?.(reply);
  waiting.delete(reply.id);
}

function makeHelper(): Helper {
  const here: Helper = { send: (question) => void answerTo(question).then(receive) };
  try {
    const worker = new Worker(URL.createObjectURL(new Blob([script], { type: "text/javascript" })));
    const open = new Map<number, Question>();
    worker.onmessage = ({ data }: MessageEvent<Reply>) => {
      open.delete(data.id);
      receive(data);
    };
    worker.onerror = () => {
      helper = here;
      for (const question of open.values()) here.send(question);
      open.clear();
    };
    return {
      send: (question) => {
        open.set(question.id, question);
        worker.postMessage(question);
      },
    };
  } catch {
    return here;
  }
}

function nextId(): number {
  lastId += 1;
  return lastId;
}

/** Nothing is asked until the page has been quiet for so long [ms]. */
const QUIET = 80;
