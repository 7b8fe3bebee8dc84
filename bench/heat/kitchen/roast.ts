/**
 * An independent kitchen to try the forecast on: a roast of voxels in three dimensions, sharing no code
 * with the forecaster. A superellipse in cross-section, flat at both ends, under a cap of fat, on a slab
 * of rib bones; properties change with temperature; every surface voxel has its own store of water and
 * dries as it loses it; the oven's thermostat cycles, its door opens; the pan shades the underside.
 */

export interface TruthRoast {
  widthMetres: number;
  heightMetres: number;
  lengthMetres: number;
  /** Exponent of the superellipse: 2 is an ellipse, larger squarer. */
  squareness: number;
  fatCapMetres: number;
  boneMetres: number;
  startCelsius: number;
  /** How much warmer the outside starts than the core. */
  tempering: number;
  conductivityFactor: number;
  convection: number;
  emissivity: number;
  /** Surface water to begin with and what seeps from within, kg/m² and kg/(m² s) per kelvin. */
  surfaceWater: number;
  seep: number;
  wetShare: number;
  /** Share of convection and radiation that reaches the underside. */
  undersideShare: number;
}

export interface TruthOven {
  program: readonly { minute: number; celsius: number }[];
  biasKelvin: number;
  driftKelvinPerHour: number;
  cycleKelvin: number;
  cycleMinutes: number;
  /** Minutes at which the door opens for half a minute to read a thermometer. */
  doorMinutes: readonly number[];
}

const voxel = 0.0085;
const air = -1;
/** A staircase has more face than the smooth curve; its exchange is thinned to make up for it. */
const staircase = 0.84;
type Kind = 'meat' | 'fat' | 'bone';

interface Face {
  cell: number;
  shaded: boolean;
  flatEnd: boolean;
  water: number;
  skin: number;
}

export class TruthModel {
  readonly roast: TruthRoast;
  readonly nx: number;
  readonly ny: number;
  readonly nz: number;
  readonly celsius: Float64Array;
  readonly index: Int32Array;
  readonly kinds: Kind[] = [];
  readonly faces: Face[] = [];
  readonly links: Int32Array;
  readonly places: [number, number, number][] = [];
  lostKilograms = 0;
  kilograms = 0;
  #next: Float64Array;

  constructor(roast: TruthRoast) {
    this.roast = roast;
    this.nx = Math.max(4, Math.round(roast.widthMetres / voxel));
    this.ny = Math.max(4, Math.round(roast.heightMetres / voxel));
    this.nz = Math.max(4, Math.round(roast.lengthMetres / voxel));
    this.index = new Int32Array((this.nx + 2) * (this.ny + 2) * (this.nz + 2)).fill(air);
    this.#carve();
    const count = this.places.length;
    this.celsius = new Float64Array(count);
    this.#next = new Float64Array(count);
    this.links = new Int32Array(count * 6);
    this.#link();
    for (let cell = 0; cell < count; cell += 1) {
      const depth = this.#depth(cell);
      this.celsius[cell] = roast.startCelsius + roast.tempering * depth * depth;
      const heavy = { meat: 1045, fat: 930, bone: 1250 }[this.kinds[cell]!];
      this.kilograms += heavy * voxel ** 3;
    }
  }

  #at(x: number, y: number, z: number): number {
    return ((z + 1) * (this.ny + 2) + (y + 1)) * (this.nx + 2) + x + 1;
  }

  #depth(cell: number): number {
    const [x, y, z] = this.places[cell]!;
    return Math.max(
      Math.abs((2 * (x + 0.5)) / this.nx - 1),
      Math.abs((2 * (y + 0.5)) / this.ny - 1),
      Math.abs((2 * (z + 0.5)) / this.nz - 1),
    );
  }

  #carve(): void {
    const { squareness, fatCapMetres, boneMetres, heightMetres } = this.roast;
    for (let z = 0; z < this.nz; z += 1) {
      for (let y = 0; y < this.ny; y += 1) {
        for (let x = 0; x < this.nx; x += 1) {
          const u = Math.abs((2 * (x + 0.5)) / this.nx - 1);
          const v = Math.abs((2 * (y + 0.5)) / this.ny - 1);
          if (u ** squareness + v ** squareness > 1) continue;
          this.index[this.#at(x, y, z)] = this.places.length;
          this.places.push([x, y, z]);
          const height = ((y + 0.5) / this.ny) * heightMetres;
          const kind =
            height < boneMetres ? 'bone' : height > heightMetres - fatCapMetres ? 'fat' : 'meat';
          this.kinds.push(kind);
        }
      }
    }
  }

  #link(): void {
    const steps = [
      [1, 0, 0],
      [-1, 0, 0],
      [0, 1, 0],
      [0, -1, 0],
      [0, 0, 1],
      [0, 0, -1],
    ] as const;
    this.places.forEach(([x, y, z], cell) => {
      steps.forEach(([dx, dy, dz], side) => {
        const other = this.index[this.#at(x + dx, y + dy, z + dz)]!;
        this.links[cell * 6 + side] = other;
        if (other === air)
          this.faces.push({
            cell,
            shaded: dy === -1,
            flatEnd: dz !== 0,
            water: this.roast.surfaceWater,
            skin: this.roast.startCelsius,
          });
      });
    });
  }

  advance(
    seconds: number,
    around: {
      airCelsius: number;
      wallCelsius: number;
      convection: number;
      emissivity: number;
      vapour: number;
      shade: number;
      damp: number;
    },
  ): void {
    const { celsius, links } = this;
    const next = this.#next;
    const { conductivityFactor } = this.roast;
    for (let cell = 0; cell < celsius.length; cell += 1) {
      const here = celsius[cell]!;
      let flow = 0;
      const own = conductivityOf(this.kinds[cell]!, here) * conductivityFactor;
      for (let side = 0; side < 6; side += 1) {
        const other = links[cell * 6 + side]!;
        if (other === air) continue;
        const theirs = conductivityOf(this.kinds[other]!, celsius[other]!) * conductivityFactor;
        flow += ((2 * own * theirs) / (own + theirs)) * (celsius[other]! - here);
      }
      next[cell] = here + (seconds * flow) / (voxel * voxel * capacityOf(this.kinds[cell]!, here));
    }
    for (const face of this.faces) this.#exchange(face, seconds, around, next);
    this.#next = this.celsius.slice();
    this.celsius.set(next);
  }

  #exchange(
    face: Face,
    seconds: number,
    around: Parameters<TruthModel['advance']>[1],
    next: Float64Array,
  ): void {
    const kind = this.kinds[face.cell]!;
    const behind = this.celsius[face.cell]!;
    const link = (2 * conductivityOf(kind, behind) * this.roast.conductivityFactor) / voxel;
    const share = (face.shaded ? around.shade : 1) * (face.flatEnd ? 1 : staircase);
    const wetness = kind === 'meat' ? 1 : kind === 'fat' ? 0.8 : 0.6;
    const full = Math.min(1, face.water / Math.max(1e-6, this.roast.surfaceWater));
    const wet = this.roast.wetShare * wetness * (0.25 + 0.75 * full) * around.damp;
    let skin = face.skin;
    let evaporated = 0;
    for (let round = 0; round < 2; round += 1) {
      const pressure = vapourPressure(skin);
      const slope = (vapourPressure(skin + 0.5) - pressure) * 2;
      const excess = Math.max(0, pressure - around.vapour);
      const draw = (wet * around.convection * 0.0155) as number;
      const glow = around.emissivity * 5.67e-8;
      const absolute = skin + 273.15;
      const net =
        share *
          (around.convection * (around.airCelsius - skin) +
            glow * ((around.wallCelsius + 273.15) ** 4 - absolute ** 4) -
            draw * excess) +
        link * (behind - skin);
      const steep =
        share * (around.convection + 4 * glow * absolute ** 3 + (excess > 0 ? draw * slope : 0)) +
        link;
      skin = Math.min(280, skin + net / steep);
      evaporated = Math.max(0, draw * (vapourPressure(skin) - around.vapour)) / 2.33e6;
    }
    face.skin = skin;
    const area = voxel * voxel * share;
    // Warm muscle gives up juice toward the surface; it slows as the outside is spent.
    const fed = this.roast.seep * Math.max(0, behind - 20);
    face.water = Math.max(
      0,
      Math.min(this.roast.surfaceWater, face.water + (fed - evaporated) * seconds),
    );
    this.lostKilograms += evaporated * area * seconds;
    next[face.cell]! += (seconds * link * (skin - behind)) / (voxel * capacityOf(kind, behind));
  }

  /** The coldest point, between voxels by the neighbours' parabola left out: the coldest voxel. */
  get coreCelsius(): number {
    let core = Number.POSITIVE_INFINITY;
    for (let cell = 0; cell < this.celsius.length; cell += 1)
      if (this.celsius[cell]! < core) core = this.celsius[cell]!;
    return core;
  }

  get coldestPlace(): [number, number, number] {
    let best = 0;
    for (let cell = 0; cell < this.celsius.length; cell += 1)
      if (this.celsius[cell]! < this.celsius[best]!) best = cell;
    const [x, y, z] = this.places[best]!;
    return [(x + 0.5) * voxel, (y + 0.5) * voxel, (z + 0.5) * voxel];
  }

  /** Trilinear between voxel middles; outside the body the nearest inside is kept. */
  probe([px, py, pz]: readonly [number, number, number]): number {
    const fx = px / voxel - 0.5;
    const fy = py / voxel - 0.5;
    const fz = pz / voxel - 0.5;
    let sum = 0;
    let weight = 0;
    for (let corner = 0; corner < 8; corner += 1) {
      const x = Math.floor(fx) + (corner & 1);
      const y = Math.floor(fy) + ((corner >> 1) & 1);
      const z = Math.floor(fz) + (corner >> 2);
      if (x < 0 || y < 0 || z < 0 || x >= this.nx || y >= this.ny || z >= this.nz) continue;
      const cell = this.index[this.#at(x, y, z)]!;
      if (cell === air) continue;
      const share = (1 - Math.abs(fx - x)) * (1 - Math.abs(fy - y)) * (1 - Math.abs(fz - z));
      sum += share * this.celsius[cell]!;
      weight += share;
    }
    return weight > 0 ? sum / weight : this.coreCelsius;
  }
}

/** Antoine's equation for water (constants from memory), mmHg to pascals. */
const vapourPressure = (celsius: number): number =>
  celsius < 100
    ? 133.322 * 10 ** (8.07131 - 1730.63 / (233.426 + celsius))
    : 133.322 * 10 ** (8.14019 - 1810.94 / (244.485 + celsius));

const conductivityOf = (kind: Kind, celsius: number): number =>
  kind === 'meat' ? 0.43 + 0.0009 * Math.min(celsius, 70) : kind === 'fat' ? 0.21 : 0.42;
/** J/(m³ K). Fat melts about 30 to 45 °C, muscle proteins take up some heat as they set. */
const capacityOf = (kind: Kind, celsius: number): number =>
  kind === 'meat'
    ? 3.5e6 + (celsius > 55 && celsius < 75 ? 2.5e5 : 0)
    : kind === 'fat'
      ? 2.1e6 + (celsius > 30 && celsius < 45 ? 1.5e6 : 0)
      : 2.4e6;
