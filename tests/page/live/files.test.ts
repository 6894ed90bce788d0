/// <reference lib="dom" />
import { readFileSync } from "node:fs";
import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { newWindow } from "../chromium.ts";
import { describeLive, layersOf, openFile, settled, textOf, typeFile, WRONG_SIDE, wordOf } from "./live-page.ts";

const LONG_WORK = 100;
const changedWall = WRONG_SIDE.replace("140 mm", "170 mm");

/** Waits until the browser keeps a copy of this text as unsaved work. */
async function keptByBrowser(page: Page, text: string): Promise<void> {
  await page.waitForFunction(
    (wanted) => Object.keys(localStorage).some((key) => JSON.parse(localStorage.getItem(key)!)?.text === wanted),
    text,
  );
}

describeLive("nothing is lost on the live page", ({ open, reopen, address }) => {
  test("closing with unsaved work asks; without, and after saving, it does not", async () => {
    const { page } = await open({ project: WRONG_SIDE });
    const asked: string[] = [];
    page.on("dialog", (dialog) => {
      asked.push(dialog.type());
      void dialog.accept();
    });
    await page.locator("#tab-1").click();
    await page.reload();
    await page.waitForSelector(".section");
    expect(asked).toEqual([]);
    await page.getByRole("button", { name: "2 mineral wool slab: thicker" }).click();
    await page.reload();
    await page.waitForSelector(".section");
    expect(asked).toEqual(["beforeunload"]);
    const [saved] = await Promise.all([
      page.waitForEvent("download"),
      page.getByRole("button", { name: "Save" }).click(),
    ]);
    expect(saved.suggestedFilename()).toBe("studio.yaml");
    expect(readFileSync(await saved.path(), "utf8")).toBe(WRONG_SIDE.replace("140 mm", "145 mm"));
    await page.reload();
    await page.waitForSelector(".section");
    expect(asked).toEqual(["beforeunload"]);
    expect(await textOf(page)).toBe(WRONG_SIDE.replace("140 mm", "145 mm"));
  });

  test("the work of a tab that crashed is there in the next one", async () => {
    const at = address(WRONG_SIDE);
    const context = await newWindow();
    const first = await context.newPage();
    await first.goto(at);
    await first.waitForSelector(".section");
    await typeFile(first, changedWall);
    await keptByBrowser(first, changedWall);
    first.goto("chrome://crash").catch(() => undefined);
    await first.waitForEvent("crash");
    await first.close();
    const next = await context.newPage();
    await next.goto(at);
    await next.waitForSelector(".section");
    expect(await textOf(next)).toBe(changedWall);
    expect(await next.locator(".remark").textContent()).toContain("This is the unsaved work of");
    await context.close();
  });

  test("two tabs of one file keep their own work, over reloads too, and it can be undone to the file as it was", async () => {
    const at = address(WRONG_SIDE);
    const context = await newWindow();
    const texts = [changedWall, WRONG_SIDE.replace("140 mm", "95 mm")];
    const tabs = [await context.newPage(), await context.newPage()];
    for (const [index, tab] of tabs.entries()) {
      tab.on("dialog", (dialog) => void dialog.accept());
      await tab.goto(at);
      await tab.waitForSelector(".section");
      await typeFile(tab, texts[index]!);
    }
    for (const [index, tab] of tabs.entries()) await keptByBrowser(tab, texts[index]!);
    for (const [index, tab] of tabs.entries()) {
      await tab.reload();
      await tab.waitForSelector(".section");
      expect(await textOf(tab)).toBe(texts[index]);
      await tab.getByRole("button", { name: "Undo" }).click();
      expect(await textOf(tab)).toBe(WRONG_SIDE);
    }
    await context.close();
  });

  test.each([
    [
      "full",
      () =>
        Object.defineProperty(Storage.prototype, "setItem", {
          value: () => {
            throw new DOMException("full", "QuotaExceededError");
          },
        }),
    ],
    [
      "denied",
      () => {
        for (const name of ["localStorage", "sessionStorage"])
          Object.defineProperty(window, name, {
            get: () => {
              throw new DOMException("denied", "SecurityError");
            },
          });
      },
    ],
  ])("storage %s: the page works, says that no copy is kept, and asks before it is closed", async (_, before) => {
    const { page, messages } = await open({ project: WRONG_SIDE, before });
    await page.getByRole("button", { name: "2 mineral wool slab: thicker" }).click();
    await page.waitForFunction(() => document.querySelector("h1")!.textContent!.includes("this browser keeps no copy"));
    let asked = 0;
    page.on("dialog", (dialog) => {
      asked += 1;
      void dialog.dismiss();
    });
    const dialog = page.waitForEvent("dialog");
    await page.evaluate(() => setTimeout(() => location.reload()));
    await dialog;
    expect(asked).toBe(1);
    expect(await textOf(page)).toBe(WRONG_SIDE.replace("140 mm", "145 mm"));
    expect(messages).toEqual([]);
  });

  test("undo leads back to the first byte, however much was done", async () => {
    const { page } = await reopen({ project: WRONG_SIDE });
    await page.evaluate((count) => {
      const area = document.querySelector<HTMLTextAreaElement>("#file-text")!;
      for (let index = 0; index < count; index += 1) {
        document.querySelectorAll<HTMLButtonElement>(".size button")[index % 2 === 0 ? 1 : 3]!.click();
        if (index % 10 === 0) area.dispatchEvent(new Event("input"));
      }
    }, LONG_WORK);
    await settled(page);
    expect(await textOf(page)).not.toBe(WRONG_SIDE);
    for (let index = 0; index < 2 * LONG_WORK && (await textOf(page)) !== WRONG_SIDE; index += 1) {
      await page.evaluate(() => document.querySelector<HTMLButtonElement>("[aria-label=Undo]")!.click());
    }
    expect(await textOf(page)).toBe(WRONG_SIDE);
  });

  test("a file of 2 MB is opened, changed and undone", async () => {
    const remark = `# ${"a long remark about the wall ".repeat(4)}\n`;
    const large = WRONG_SIDE + remark.repeat(Math.ceil((2_000_000 - WRONG_SIDE.length) / remark.length));
    const { page } = await reopen({ project: large.slice(0, 2_000_000) });
    expect(await wordOf(page)).toBe("change it");
    await page.getByRole("button", { name: "2 mineral wool slab: thicker" }).click();
    expect((await textOf(page)).length).toBe(2_000_000);
    expect(await textOf(page)).toContain("145 mm");
    await page.getByRole("button", { name: "Undo" }).click();
    expect((await textOf(page)) === large.slice(0, 2_000_000)).toBe(true);
  });

  test("a file with faults is opened, its problems are told, and no other build-up is shown as if it were its", async () => {
    const { page } = await reopen({ project: WRONG_SIDE });
    const faulty = WRONG_SIDE.replace("mineral wool slab", "mineral woll slab");
    await openFile(page, "faulty.yaml", faulty);
    expect(await page.locator(".section").count()).toBe(0);
    expect(await page.locator(".problems").textContent()).toContain("mineral woll slab");
    expect(await textOf(page)).toBe(faulty);
    expect(await page.getByRole("button", { name: "Report" }).isDisabled()).toBe(true);
    await page.getByRole("button", { name: /^Write it: mineral wool slab/ }).click();
    await settled(page);
    expect((await layersOf(page))[1]).toBe("mineral wool slab");
  });

  test.each([
    ["a picture", Buffer.from([0x89, 0x50, 0x4e, 0x47, 0xff, 0xfe, 0x00])],
    ["a letter", "Dear Sir,\nthe wall is wet.\n"],
    ["an empty file", ""],
    ["other YAML", "services:\n  web: { image: x }\n"],
  ])("%s is no project: told, and the work stays", async (_, content) => {
    const { page } = await reopen({ project: WRONG_SIDE });
    await openFile(page, "other.txt", content as string);
    expect(await page.locator(".remark").textContent()).toContain(
      "other.txt is no warmside project. Your work is unchanged.",
    );
    expect(await textOf(page)).toBe(WRONG_SIDE);
  });

  test("a project is opened with the tables it names, and from the page's own file", async () => {
    const { page } = await reopen({ project: WRONG_SIDE });
    const climate = readFileSync(new URL("../../../climate/oslo.csv", import.meta.url), "utf8");
    const project = WRONG_SIDE.replace("climate: de-bilt", "climate: site.csv");
    const chooser = page.waitForEvent("filechooser");
    await page.getByRole("button", { name: "Open", exact: true }).click();
    await (await chooser).setFiles([
      { name: "wall.yaml", mimeType: "application/yaml", buffer: Buffer.from(project) },
      { name: "site.csv", mimeType: "text/csv", buffer: Buffer.from(climate) },
    ]);
    await page.waitForFunction(() => document.querySelector("h1 small")!.textContent === "wall.yaml");
    await settled(page);
    expect(await page.locator(".problems").count()).toBe(0);
    expect(await page.getByLabel("Place", { exact: true }).inputValue()).toBe("site.csv");
  });
});
