import { answerTo, type Question } from "./work.ts";

/** What a worker's own scope has of what is used here. */
interface WorkerScope {
  onmessage: (event: { data: Question }) => void;
  postMessage: (data: unknown) => void;
}

/** Answers what the page asks, one question after another; one that a later question has overtaken is left out. */
export function workHere(): void {
  const scope = globalThis as unknown as WorkerScope;
  let queue: Question[] = [];
  let isBusy = false;
  const goOn = async (): Promise<void> => {
    if (isBusy) return;
    isBusy = true;
    for (let next = queue.shift(); next !== undefined; next = queue.shift()) {
      scope.postMessage(await answerTo(next));
      // What came in meanwhile is seen before the next is begun.
      await new Promise((resolve) => setTimeout(resolve, 0));
    }
    isBusy = false;
  };
  scope.onmessage = ({ data }) => {
    queue = [...queue.filter(({ kind }) => kind !== "beside" || data.kind !== "beside"), data];
    void goOn();
  };
}
