import { type AirLayer, type Layer, readProject, readProjectOrThrow, type SolidLayer } from "@warmside/core";
import { describe, expect, it } from "vitest";
import { CONTRACT_PROJECT, changed, projectOf, SMALL_PROJECT } from "./project-texts.ts";

const layersOf = (text: string, files?: Record<string, string>): readonly Layer[] =>
  projectOf(text, files).buildUps[0]!.layers;
const solid = (layer: Layer | undefined): SolidLayer => layer as SolidLayer;

/** The small project with another layer in place of its boarding. */
const withLayer = (layer: string): SolidLayer =>
  solid(layersOf(changed("{ material: softwood timber, thickness: 20 mm }", layer)).at(-1));

describe("the project file of the contracts", () => {
  const project = projectOf(CONTRACT_PROJECT);
  const [wall] = project.buildUps;

  it("gives names, climate and rooms", () => {
    expect(project.name).toBe("Alder Row pottery studio");
    expect(project.reference).toBe("AR-7");
    expect(project.climate.name).toBe("de-bilt");
    expect(project.severity).toEqual({ name: "mean year", offset: 0 });
    expect([...project.rooms.keys()]).toEqual(["indoor", "damp room", "store"]);
    expect(project.rooms.get("indoor")).toMatchObject({
      temperature: { kind: "heated", setPoint: 20, daysPerWeek: 7 },
      cooling: null,
      humidity: { kind: "class", class: 3 },
    });
    expect(project.rooms.get("store")).toMatchObject({
      temperature: { kind: "unheated" },
      humidity: { kind: "as outdoors" },
    });
    expect(project.oddities).toEqual([]);
  });

  it("gives layers from the room outwards, in SI, with every material found", () => {
    expect(wall).toMatchObject({
      slug: "studio-wall",
      element: "wall",
      room: "indoor",
      faces: "outdoors",
      target: 0.25,
    });
    expect(wall!.layers.map(({ type }) => type)).toEqual([
      "material",
      "sheet",
      "material",
      "material",
      "sheet",
      "air",
      "material",
    ]);
    expect(wall!.layers.map(({ thickness }) => thickness)).toEqual([0.0125, 0, 0.14, 0.011, 0, 0.025, 0.02]);
    expect(solid(wall!.layers[0]).material).toMatchObject({
      conductivity: 0.21,
      vapourResistanceFactorDry: 10,
      kind: "paper",
    });
    expect(solid(wall!.layers[1]).material.equivalentAirLayerThickness).toBe(50);
    expect(wall!.layers[5]).toMatchObject({ name: "air layer, 25 mm", ventilation: "well", resistance: null });
  });

  it("gives 45 mm at 600 mm in a wall 15 % of timber (method, section 3)", () => {
    const { framing } = solid(wall!.layers[2]);
    expect(framing!.share).toBeCloseTo(0.15, 12);
    expect(framing).toMatchObject({
      name: "studs",
      ofOneLayer: false,
      origin: { kind: "width and spacing", width: 0.045, spacing: 0.6, otherTimber: 0.075, otherTimberByDefault: true },
    });
  });
});

describe("the text of a file", () => {
  it("may be JSON", () => {
    const json = JSON.stringify({
      project: "Shop",
      climate: "oslo",
      indoor: { heating: "20 °C", humidity: "class 2" },
      "build-ups": [
        {
          name: "Wall",
          element: "wall",
          layers: [
            {
              material: { name: "board", conductivity: "0.1 W/(m K)", "vapour resistance factor": 5 },
              thickness: "20 mm",
            },
          ],
        },
      ],
    });
    expect(solid(layersOf(json)[0])).toMatchObject({
      thickness: 0.02,
      material: { conductivity: 0.1, vapourResistanceFactorDry: 5 },
    });
  });

  it("may begin with a byte-order mark and have the line ends of Windows: the project is the same", () => {
    const plain = projectOf(SMALL_PROJECT);
    expect(projectOf(`\uFEFF${SMALL_PROJECT}`)).toEqual(plain);
    expect(projectOf(SMALL_PROJECT.replaceAll("\n", "\r\n"))).toEqual(plain);
  });

  it("keeps names of digits as written", () => {
    const project = projectOf(changed("climate:", "reference: 007\nclimate:"));
    expect(project.reference).toBe("007");
    expect(projectOf(changed("name: Studio wall", "name: 12")).buildUps[0]!.name).toBe("12");
  });

  it("may repeat a part by an anchor", () => {
    const text = changed("indoor: {", "indoor: &room {").replace(
      "damp room: { heating: 18 °C, humidity: 60 % }",
      "shop: *room",
    );
    expect(projectOf(text).rooms.get("shop")).toEqual({ ...projectOf(text).rooms.get("indoor"), name: "shop" });
  });

  it("read or thrown gives the same project", () => {
    expect(readProjectOrThrow(SMALL_PROJECT)).toEqual(projectOf(SMALL_PROJECT));
    expect(() => readProjectOrThrow(changed("12.5 mm", "12.5"))).toThrow("thickness is missing a unit");
  });

  it("is read twice to the same data, and the data share nothing that could be changed", () => {
    expect(readProject(SMALL_PROJECT)).toEqual(readProject(SMALL_PROJECT));
  });
});

describe("materials of layers", () => {
  it("are found whatever the case, hyphens and spaces", () => {
    expect(withLayer("{ material: Softwood  TIMBER, thickness: 20 mm }").material.name).toBe("softwood timber");
    expect(withLayer("{ material: Sheep's Wool, thickness: 100 mm }").material.name).toBe("sheep's wool");
  });

  it("may be given on the spot, with their source", () => {
    const { material } = withLayer(
      "{ material: { name: my board, conductivity: 0.09 W/(m K), vapour resistance factor: 12, wet vapour resistance factor: 8, " +
        "density: 400 kg/m3, specific heat: 1.6 kJ/(kg K), kind: board, emissivity: 0.8, spread: 10 %, source: data sheet }, thickness: 20 mm }",
    );
    expect(material).toEqual({
      name: "my board", group: null, kind: "board", density: 400, conductivity: 0.09, specificHeat: 1600,
      vapourResistanceFactorDry: 12, vapourResistanceFactorWet: 8, equivalentAirLayerThickness: null,
      equivalentAirLayerThicknessByHumidity: null, emissivity: 0.8, facingInner: null, facingOuter: null,
      source: "data sheet", basis: "declared", spread: 0.1,
    }); // biome-ignore format: one material
  });

  it("without a source are assumed, and say where they stand", () => {
    const { material } = withLayer("{ material: { name: my sheet, sd: 4 m } }");
    expect(material).toMatchObject({
      basis: "assumed",
      source: "given in the project file",
      equivalentAirLayerThickness: 4,
    });
  });

  it.each([
    ["vapour resistance: 200 MN s/g", 40, "1 MN·s/g is an sd of 0.2 m"],
    ["permeance: 1 perm", 3.497, "one US perm is an sd of 3.497 m"],
    ["sd: 40 m", 40, "sd itself"],
    ["sd by humidity: [[30 %, 10 m], [80 %, 0.5 m]]", 10, "the driest value stands for a sheet that changes"],
  ])("sheet with %s has sd %f m: %s (method, section 1)", (given, sd) => {
    const layer = withLayer(`{ material: { name: my sheet, ${given} } }`);
    expect(layer.type).toBe("sheet");
    expect(layer.material.equivalentAirLayerThickness).toBeCloseTo(sd, 3);
  });

  it("keeps the pairs of a sheet whose sd changes", () => {
    const { material } = withLayer("{ material: { name: smart, sd by humidity: [[30 %, 10 m], [80 %, 0.5 m]] } }");
    expect(material.equivalentAirLayerThicknessByHumidity).toEqual([
      [0.3, 10],
      [0.8, 0.5],
    ]);
  });

  it("a foil-faced board brings its facings; the layer's own keys go before them", () => {
    expect(withLayer("{ material: foil-faced PIR board, thickness: 90 mm }")).toMatchObject({
      facingInner: 1500, facingOuter: 1500, emissivityInner: 0.05, emissivityOuter: 0.05,
    }); // biome-ignore format: one board
    expect(
      withLayer(
        "{ material: foil-faced PIR board, thickness: 90 mm, facing sd inner: 5 m, facing emissivity outer: 0.9 }",
      ),
    ).toMatchObject({ facingInner: 5, facingOuter: 1500, emissivityInner: 0.05, emissivityOuter: 0.9 });
  });

  it("of the user's own table go before shipped ones of the same name", () => {
    const table = "name,conductivity_W_mK,mu_dry,sd_m,source\nsoftwood timber,0.14,40,,mill certificate\n";
    const layers = layersOf(changed("climate:", "materials: my.csv\nclimate:"), { "my.csv": table });
    expect(solid(layers.at(-1)).material).toMatchObject({
      conductivity: 0.14,
      source: "mill certificate",
      basis: "declared",
    });
  });
});

describe("a conductivity that only metal has", () => {
  const note = (values: string): readonly string[] =>
    projectOf(
      changed(
        "{ material: softwood timber, thickness: 20 mm }",
        `{ name: last, material: { name: stuff, vapour resistance factor: 3, ${values} }, thickness: 20 mm }`,
      ) + "    variants:\n      - name: thicker\n        changes: [ { set: last, thickness: 30 mm } ]\n",
    ).oddities.map(({ code, message }) => `${code}: ${message}`);

  it("is noted once of a material on the spot that is not said to be metal", () => {
    expect(note("conductivity: 40 W/(m K)")).toEqual([
      expect.stringMatching(
        /^odd-conductivity: build-up 1, Studio wall, layer 5, last.*: conductivity 40 W\/\(m K\) is unusual: only metal/,
      ),
    ]);
  });

  it.each(["conductivity: 40 W/(m K), kind: metal", "conductivity: 4.5 W/(m K)", "conductivity: 40 mW/(m K)"])(
    "is not noted of %s",
    (values) => expect(note(values)).toEqual([]),
  );
});

describe("sheets that the method counts by their own rule (section 1)", () => {
  it.each([
    ["polyethylene low density, thickness: 0.15 mm", 50],
    ["polyethylene low density, thickness: 0.3 mm", 100],
    ["polyethylene high density, thickness: 1000 gauge", 83.333],
    ["polyethylene low density, thickness: 500 gauge", 41.667],
  ])("%s is a sheet of sd %f m, never by the polymer's μ", (layer, sd) => {
    const read = withLayer(`{ material: ${layer} }`);
    expect(read).toMatchObject({ type: "sheet", thickness: 0 });
    expect(read.material.equivalentAirLayerThickness).toBeCloseTo(sd, 3);
    expect(read.material.conductivity).toBeNull();
    expect(read.material.source).toContain("50 m for each 0.15 mm");
  });

  it("polythene of 2 mm is a plate with its μ", () => {
    expect(withLayer("{ material: polyethylene high density, thickness: 2 mm }").type).toBe("material");
  });

  it.each(["steel, thickness: 0.7 mm", "aluminium, thickness: 0.05 mm", "glass, thickness: 1 mm"])(
    "%s has an sd of at least 1500 m and says so",
    (layer) => {
      const { material, thickness } = withLayer(`{ material: ${layer} }`);
      expect(material.vapourResistanceFactorDry! * thickness).toBeCloseTo(1500, 6);
      expect(material.source).toContain("at least 1500 m");
    },
  );

  it("thick glass keeps its own μ; overlapped metal given as a sheet keeps its own sd", () => {
    expect(withLayer("{ material: glass, thickness: 10 mm }").material.vapourResistanceFactorDry).toBe(1e6);
    const { material } = withLayer("{ material: { name: lapped steel, kind: metal, sd: 5 m } }");
    expect(material.equivalentAirLayerThickness).toBe(5);
  });
});

describe("framing", () => {
  const framingOf = (framing: string, element = "wall"): number => {
    const text = changed("element: wall", `element: ${element}`).replace("framing: studs", `framing: ${framing}`);
    return solid(layersOf(text)[2]).framing!.share;
  };

  it.each([
    ["wall", 0.15],
    ["flat roof", 0.085],
    ["pitched roof", 0.085],
    ["floor", 0.085],
  ])("45 mm at 600 mm in a %s takes a share of %f with the usual other timber", (element, share) => {
    expect(framingOf("studs", element)).toBeCloseTo(share, 12);
  });

  it("may be a fraction, or have its own other timber, for one layer alone", () => {
    expect(framingOf("{ material: softwood timber, fraction: 12 % }")).toBe(0.12);
    expect(framingOf("{ material: softwood timber, width: 60 mm, spacing: 600 mm, other timber: 2 % }")).toBeCloseTo(
      0.12,
      12,
    );
    const text = changed("framing: studs", "framing: { material: softwood timber, fraction: 12 % }");
    expect(solid(layersOf(text)[2]).framing).toMatchObject({
      name: "softwood timber",
      ofOneLayer: true,
      origin: { kind: "fraction" },
    });
  });

  it("runs through sheets and air too", () => {
    const text = changed("{ air: 25 mm, ventilation: well }", "{ air: 25 mm, ventilation: none, framing: studs }");
    expect((layersOf(text)[3] as AirLayer).framing!.name).toBe("studs");
  });
});

describe("air layers", () => {
  it("count openings by length in walls and by area in roofs and floors, and in steep roofs by length", () => {
    const area = (element: string, written: string, more = ""): number | null => {
      const text = changed("element: wall", `element: ${element}${more}`).replace(
        "ventilation: well",
        `ventilation: slight, ventilation area: ${written}`,
      );
      return (layersOf(text)[3] as AirLayer).ventilationArea;
    };
    expect(area("wall", "1000 mm2/m")).toBeCloseTo(0.001, 12);
    expect(area("flat roof", "1000 mm2/m2")).toBeCloseTo(0.001, 12);
    for (const pitch of ["65 °", "65 deg", "65.0 °", "60.5 deg"])
      expect(area("pitched roof", "1000 mm2/m", `\n    pitch: ${pitch}`), pitch).toBeCloseTo(0.001, 12);
    for (const pitch of ["60 °", "60 deg"])
      expect(area("pitched roof", "1000 mm2/m2", `\n    pitch: ${pitch}`), pitch).toBeCloseTo(0.001, 12);
  });

  it.each([
    ["none", "500 mm2/m"],
    ["slight", "501 mm2/m"],
    ["slight", "1499 mm2/m"],
    ["well", "1500 mm2/m"],
  ])("are %s with openings of %s, and with nothing else (ISO 6946:2017 clause 6.9, from memory)", (right, area) => {
    const read = ["none", "slight", "well"].filter((ventilation) => {
      const text = changed("ventilation: well", `ventilation: ${ventilation}, ventilation area: ${area}`);
      return readProject(text).ok;
    });
    expect(read).toEqual([right]);
  });

  it("may state a resistance, an emissivity and where they are open", () => {
    const text = changed(
      "{ air: 25 mm, ventilation: well }",
      "{ air: 400 mm, ventilation: slight, resistance: 0.2 m2 K/W, emissivity: 0.05, open: one end }",
    );
    expect(layersOf(text)[3]).toMatchObject({ thickness: 0.4, resistance: 0.2, emissivity: 0.05, open: "one end" });
  });
});

describe("severity", () => {
  it.each([
    ["mean year", 0],
    ["one in ten colder", -2],
    ["one in ten warmer", 2],
    ["+2 K", 2],
    ["-1.5 K", -1.5],
    ["−1.5 K", -1.5],
  ])("%s shifts the year by %f K", (written, offset) => {
    expect(projectOf(changed("climate:", `severity: ${written}\nclimate:`)).severity.offset).toBe(offset);
  });
});

describe("slugs", () => {
  it("are unique, whatever the names", () => {
    const twice = SMALL_PROJECT + SMALL_PROJECT.slice(SMALL_PROJECT.indexOf("  - name:"));
    const odd = twice.replace("name: Studio wall", "name: '../../Étage №1 <b>'");
    expect(projectOf(twice).buildUps.map(({ slug }) => slug)).toEqual(["studio-wall", "studio-wall-2"]);
    expect(projectOf(odd).buildUps[0]!.slug).toBe("etage-no1-b");
  });
});
