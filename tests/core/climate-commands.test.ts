import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { readClimate } from "../../packages/core/src/climate/read-climate.ts";
import { climateMake } from "../../packages/report/src/cli/climate/climate-make.ts";
import { sparkline } from "../../packages/report/src/cli/climate/sparkline.ts";
import { contextOf } from "../../packages/report/src/cli/command-context.ts";
import { runInFolder } from "../hostile/command-in-a-folder.ts";
import { isoRecords, isoTime, madeUpReadings } from "./record-years.ts";

const records = isoRecords(madeUpReadings([2003]));
const excerpt = readFileSync(join(import.meta.dirname, "excerpts/oslo-2001-2002.csv"), "utf8");

describe("climate make", () => {
  test("writes the table beside the records, tells the months, and the table can be read", async () => {
    const ended = await runInFolder({ "oslo.csv": excerpt }, [
      "climate",
      "make",
      "oslo.csv",
      "--place",
      "Oslo",
      "--latitude",
      "59.943",
      "--longitude",
      "10.721",
      "--altitude",
      "94",
      "--origin",
      "an excerpt",
    ]);
    expect(ended).toMatchObject({ exit: 0, messages: "" });
    expect(ended.answer).toContain("January     −2.8   93.1   62\n");
    expect(ended.answer.replaceAll("\n", " ")).toContain(
      "Written to oslo-climate.csv. In a project file: climate: oslo-climate.csv",
    );
    expect(Object.keys(ended.after)).toEqual(["oslo-climate.csv", "oslo.csv"]);
    const table = readClimate(Buffer.from(ended.after["oslo-climate.csv"]!, "latin1").toString("utf8"), "oslo");
    expect(table.ok && table.value).toMatchObject({ latitude: 59.943, longitude: 10.721, altitude: 94 });
    expect(table.ok && table.value.origin).toContain("place: Oslo");
    expect(table.ok && table.value.origin).toContain("origin: an excerpt");
  });

  test("its own table is written over, and it can be assessed with", async () => {
    const first = await runInFolder({ "meadow.csv": records }, ["climate", "make", "meadow.csv"]);
    const made = first.after["meadow-climate.csv"]!;
    const again = await runInFolder({ "meadow.csv": records, "meadow-climate.csv": Buffer.from(made, "latin1") }, [
      "climate",
      "make",
      "meadow.csv",
    ]);
    expect(again.exit).toBe(0);
    expect(again.after["meadow-climate.csv"]).toBe(made);
    const project = `project: Kiln shed
climate: meadow-climate.csv
indoor: { heating: 20 °C, humidity: class 3 }
build-ups:
  - { name: Wall, element: wall, layers: [ { material: softwood timber, thickness: 40 mm } ] }
`;
    const checked = await runInFolder({ "shed.yaml": project, "meadow-climate.csv": Buffer.from(made, "latin1") }, [
      "check",
      "shed.yaml",
    ]);
    expect(checked.messages).toBe("");
    expect(checked.exit).toBe(0);
  });

  test("a table changed by hand is left alone, unless --out names it", async () => {
    const first = await runInFolder({ "meadow.csv": records }, ["climate", "make", "meadow.csv"]);
    const made = first.after["meadow-climate.csv"]!;
    const corrected = Buffer.from(made.replace("# place: meadow", "# place: Upper meadow"), "latin1");
    const files = { "meadow.csv": records, "meadow-climate.csv": corrected };
    const refused = await runInFolder(files, ["climate", "make", "meadow.csv"]);
    expect(refused.exit).toBe(1);
    expect(refused.messages.replaceAll(/\s+/g, " ")).toContain(
      "meadow-climate.csv is there already and was changed since warmside wrote it",
    );
    expect(refused.after).toEqual(refused.before);
    const named = await runInFolder(files, ["climate", "make", "meadow.csv", "--out", "meadow-climate.csv"]);
    expect(named.exit).toBe(0);
    expect(named.after["meadow-climate.csv"]).toBe(made);
  });

  test("a table somewhere else is named with --out, without a position nothing is told of one", async () => {
    const ended = await runInFolder({ "meadow.csv": records, "mine.csv": "mine" }, [
      "climate",
      "make",
      "meadow.csv",
      "--out",
      "mine.csv",
    ]);
    expect(ended.exit).toBe(0);
    expect(ended.after["mine.csv"]).toMatch(
      /^# place: meadow\n# period: 2003-01-01 to 2003-12-31, a reading every day\n/,
    );
  });

  test("--json prints the months and writes nothing", async () => {
    const ended = await runInFolder({ "meadow.csv": records }, [
      "climate",
      "make",
      "meadow.csv",
      "--json",
      "--altitude",
      "12",
    ]);
    const data = JSON.parse(ended.answer);
    expect(data.place).toMatchObject({ place: "meadow", altitude: 12, latitude: null });
    expect(data.records.months).toHaveLength(12);
    expect(data.records.months[0]).toMatchObject({ temperature: 5, used: 31, expected: 31 });
    expect(ended.after).toEqual(ended.before);
  });

  test("options about columns and units reach the records", async () => {
    const odd = isoRecords(
      madeUpReadings([2003]).map((reading) => ({
        ...reading,
        temperature: reading.temperature * 1.8 + 32,
        humidity: 0.8,
      })),
      "when,aussen,feuchte",
    );
    const words = [
      "climate",
      "make",
      "odd.csv",
      "--json",
      "--column",
      "date=when",
      "--column",
      "temperature=aussen",
      "--column",
      "relative humidity=feuchte",
      "--temperature-unit",
      "°F",
      "--humidity-unit",
      "fraction",
    ];
    const ended = await runInFolder({ "odd.csv": odd }, words);
    expect(JSON.parse(ended.answer).records.months[11]).toMatchObject({
      temperature: 16,
      relativeHumidity: expect.closeTo(0.8, 9),
    });
  });

  test("missing, repeated, contradicting and saturated readings are told", async () => {
    const year = madeUpReadings([2003]);
    const rows = [...year.slice(3), year[10]!, { ...year[20]!, temperature: 9 }];
    const text = `${isoRecords(rows)}${isoTime(year[0]!)},5,101\n`;
    const ended = await runInFolder({ "meadow.csv": text }, ["climate", "make", "meadow.csv"]);
    expect(ended.answer).toContain("January      5.0   80.7   29, 2 missing (6.5 %)");
    for (const remark of ["1 row repeats", "1 row contradicts", "1 reading a little over saturation was"])
      expect(ended.answer).toContain(remark);
  });

  test("progress is shown on a terminal and taken away again, elsewhere nothing is", async () => {
    const shown: string[] = [];
    const make = (isTTY: boolean): Promise<unknown> => {
      const stderr = { isTTY, write: (text: string) => shown.push(text) };
      const cwd = (): string => join(import.meta.dirname, "excerpts");
      return climateMake("oslo-2001-2002.csv", { json: true }, contextOf({ cwd, env: {}, stdout: {}, stderr }));
    };
    await make(false);
    expect(shown).toEqual([]);
    await make(true);
    expect(shown).toEqual(["\r\u001b[2KReading: 100 %", "\r\u001b[2K"]);
  });
});

describe("climate list", () => {
  test("has a line a place with coldest and warmest month, annual mean and a small picture", async () => {
    const { answer, exit } = await runInFolder({}, ["climate", "list"]);
    expect(exit).toBe(0);
    const lines = answer.trimEnd().split("\n");
    expect(lines).toHaveLength(20);
    expect(lines[15]).toBe("oslo                       Feb  −1.9  Jul  17.7      7.2  ▂▂▂▃▄▅▆▅▄▃▃▂");
    expect(Math.max(...lines.map((line) => line.length))).toBeLessThanOrEqual(80);
  });

  test("as data too", async () => {
    const { answer } = await runInFolder({}, ["climate", "list", "--json"]);
    const { climates } = JSON.parse(answer);
    expect(climates).toHaveLength(19);
    expect(climates.find(({ name }: { name: string }) => name === "heathrow")).toMatchObject({
      latitude: 51.479,
      coldest: { month: "December", temperature: 5.68 },
      warmest: { month: "August", temperature: 18.72 },
    });
  });
});

describe("climate near", () => {
  const near = async (...words: string[]): Promise<string> =>
    (await runInFolder({}, ["climate", "near", ...words])).answer.replaceAll("\n", " ");

  test("gives the nearest three with distances, and what to write", async () => {
    expect(await near("51.5", "-0.1")).toMatch(
      /^heathrow: 24 km away, at 25 m de-bilt: \d+ km away, at 2 m maastricht: \d+ km .* Write in the project file: climate: heathrow /,
    );
  });

  test("cautions over 100 km and over 300 m, and says when heights were not compared", async () => {
    expect(await near("51.5", "-0.1", "--altitude", "100")).not.toContain("Caution");
    expect(await near("51.5", "-0.1")).toContain("Heights were not compared: add --altitude.");
    expect(await near("47.5", "8.5", "--altitude", "900")).toContain(
      "Caution: the site is 584 m higher than the station.",
    );
    expect(await near("52.5", "-3", "--altitude", "20")).toMatch(/Caution: \d+ km is far for a station/);
  });

  test("where all stations are too far, that is told before anything else, with how to make a climate", async () => {
    for (const place of [["-37.8", "145"], ["33.9 S", "151.2 E"], ["Melbourne, AU"], ["Tokyo"]]) {
      const answer = await near(...place);
      expect(answer).toContain("No climate at hand lies within 500 km.");
      expect(answer).toContain("warmside climate make RECORDS.csv");
      expect(answer).not.toContain("Write in the project file");
    }
    const { answer } = await runInFolder({}, ["climate", "near", "-37.8", "145", "--json"]);
    expect(JSON.parse(answer)).toMatchObject({ near: [], within: 500_000 });
  });

  test("a town is found by its name, accents and case forgiven; others of the name are told", async () => {
    expect(await near("London")).toMatch(
      /^London, GB \(51\.51, -0\.13\)\. For another .*"London, CA".* heathrow: 22 km/,
    );
    expect(await near("zurich")).toContain("Zürich, CH");
    expect(await near("De", "Bilt")).toContain("de-bilt: 0 km away");
    expect(await near("London, CA")).toContain("No climate at hand");
  });

  test("as data too", async () => {
    const { answer } = await runInFolder({}, ["climate", "near", "47.5", "7.6", "--altitude", "316", "--json"]);
    const { near: places } = JSON.parse(answer);
    expect(places[0]).toMatchObject({ name: "basel", far: false, otherHeight: false, heightOverStation: 0 });
  });

  test.each([
    [["95", "3"], 'The latitude "95" cannot be read'],
    [["5", "200"], 'The longitude "200" cannot be read'],
    [["5", "20", "--altitude", "high"], 'The altitude "high" cannot be read'],
    [["Nowhere-on-Sea"], "No town of over 15 000 people"],
    [["London", "--altitude", "high"], 'The altitude "high" cannot be read'],
  ])("%s is refused", async (words, message) => {
    const ended = await runInFolder({}, ["climate", "near", ...words]);
    expect(ended).toMatchObject({ exit: 1, answer: "" });
    expect(ended.messages).toContain(message);
  });
});

describe("climate alone", () => {
  test("shows its help; an unknown word is told", async () => {
    expect(await runInFolder({}, ["climate"])).toMatchObject({
      exit: 1,
      messages: expect.stringContaining("Usage: warmside climate"),
    });
    const { messages } = await runInFolder({}, ["climate", "weather"]);
    expect(messages.replaceAll("\n", " ")).toContain(
      'There is no command "climate weather". There are make, list and near.',
    );
  });
});

describe("a sparkline", () => {
  test("has a bar a value, the lowest and highest at the ends and beyond them", () => {
    expect(sparkline([0, 5, 10], 0, 10)).toBe("▁▅█");
    expect(sparkline([-100, 100], 0, 10)).toBe("▁█");
    expect(sparkline([], 0, 10)).toBe("");
  });
});
