/**
 * An independent kitchen to try the forecast on, its meat: a roast of voxels in three dimensions, sharing
 * no code with the forecaster. A superellipse in cross-section, flat at both ends, under a cap of fat, on
 * a slab of rib bones; properties change with temperature; every surface voxel has its own store of water
 * and dries as it loses it; the pan shades the underside.
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

/** What surrounds the meat for one step. */
export interface TruthAir {
  airCelsius: number;
  wallCelsius: number;
  /** W/(m² K) */
  convection: number;
  emissivity: number;
  /** Pascals of vapour in the air. */
  vapour: number;
  /** Share of the exchange that reaches the underside. */
  shade: number;
  /** Share of the evaporation that a cover lets pass. */
  damp: number;
}

/** Voxels are about this long each way, and fit the roast exactly. */
const usualVoxel = 0.0085;
const none = -1;
/** A staircase has more face than the smooth curve; its exchange is thinned to make up for it. */
const staircase = 0.84;

const meat = 0;
const fat = 1;
const bone = 2;
const density = [1045, 930, 1250] as const;
const wetness = [1, 0.8, 0.6] as const;

interface Faces {
  cell: number[];
  /** 1 on the underside. */
  shaded: number[];
  /** Area thinned for the staircase, m², and metres from the middle of the voxel. */
  area: number[];
  depth: number[];
}

export class TruthModel {
  readonly roast: TruthRoast;
  readonly celsius: Float64Array;
  lostKilograms = 0;
  kilograms = 0;
  readonly #counts: readonly [number, number, number];
  readonly #voxel: readonly [number, number, number];
  readonly #index: Int32Array;
  readonly #kinds: Uint8Array;
  readonly #places: Int32Array;
  readonly #volume: number;
  /** Two cells and one over the square of their distance, for each pair of neighbours. */
  readonly #left: Int32Array;
  readonly #right: Int32Array;
  readonly #nearness: Float64Array;
  readonly #faces: Faces = { cell: [], shaded: [], area: [], depth: [] };
  readonly #water: Float64Array;
  readonly #skin: Float64Array;
  readonly #conductivity: Float64Array;
  readonly #capacity: Float64Array;
  readonly #flow: Float64Array;

  constructor(roast: TruthRoast) {
    this.roast = roast;
    const sizes = [roast.widthMetres, roast.heightMetres, roast.lengthMetres] as const;
    const counts = sizes.map((size) => Math.max(4, Math.round(size / usualVoxel)));
    const [nx, ny, nz] = counts as [number, number, number];
    this.#counts = [nx, ny, nz];
    this.#voxel = [sizes[0] / nx, sizes[1] / ny, sizes[2] / nz];
    this.#volume = this.#voxel[0] * this.#voxel[1] * this.#voxel[2];
    this.#index = new Int32Array((nx + 2) * (ny + 2) * (nz + 2)).fill(none);
    const { places, kinds } = this.#carve();
    this.#places = Int32Array.from(places);
    this.#kinds = Uint8Array.from(kinds);
    const count = kinds.length;
    this.celsius = new Float64Array(count);
    this.#conductivity = new Float64Array(count);
    this.#capacity = new Float64Array(count);
    this.#flow = new Float64Array(count);
    const { left, right, nearness } = this.#link();
    this.#left = Int32Array.from(left);
    this.#right = Int32Array.from(right);
    this.#nearness = Float64Array.from(nearness);
    this.#water = new Float64Array(this.#faces.cell.length).fill(roast.surfaceWater);
    this.#skin = new Float64Array(this.#faces.cell.length).fill(roast.startCelsius);
    for (let cell = 0; cell < count; cell += 1) {
      const depth = this.#depth(cell);
      this.celsius[cell] = roast.startCelsius + roast.tempering * depth * depth;
      this.kilograms += density[this.#kinds[cell] as 0 | 1 | 2] * this.#volume;
    }
  }

  #at(x: number, y: number, z: number): number {
    const [nx, ny] = this.#counts;
    return ((z + 1) * (ny + 2) + (y + 1)) * (nx + 2) + x + 1;
  }

  #depth(cell: number): number {
    let most = 0;
    for (let axis = 0; axis < 3; axis += 1) {
      const place = this.#places[3 * cell + axis]!;
      most = Math.max(most, Math.abs((2 * (place + 0.5)) / this.#counts[axis]! - 1));
    }
    return most;
  }

  #carve(): { places: number[]; kinds: number[] } {
    const { squareness, fatCapMetres, boneMetres, heightMetres } = this.roast;
    const [nx, ny, nz] = this.#counts;
    const places: number[] = [];
    const kinds: number[] = [];
    for (let z = 0; z < nz; z += 1) {
      for (let y = 0; y < ny; y += 1) {
        for (let x = 0; x < nx; x += 1) {
          const u = Math.abs((2 * (x + 0.5)) / nx - 1);
          const v = Math.abs((2 * (y + 0.5)) / ny - 1);
          if (u ** squareness + v ** squareness > 1) continue;
          this.#index[this.#at(x, y, z)] = kinds.length;
          places.push(x, y, z);
          const height = ((y + 0.5) / ny) * heightMetres;
          kinds.push(
            height < boneMetres ? bone : height > heightMetres - fatCapMetres ? fat : meat,
          );
        }
      }
    }
    return { places, kinds };
  }

  #link(): { left: number[]; right: number[]; nearness: number[] } {
    const left: number[] = [];
    const right: number[] = [];
    const nearness: number[] = [];
    for (let cell = 0; cell < this.#kinds.length; cell += 1) {
      for (let axis = 0; axis < 3; axis += 1) {
        for (const way of [-1, 1]) {
          const place = [0, 1, 2].map(
            (one) => this.#places[3 * cell + one]! + (one === axis ? way : 0),
          ) as [number, number, number];
          const other = this.#index[this.#at(...place)]!;
          const distance = this.#voxel[axis]!;
          if (other === none) {
            const area = this.#volume / distance;
            this.#faces.cell.push(cell);
            this.#faces.shaded.push(axis === 1 && way === -1 ? 1 : 0);
            this.#faces.area.push(area * (axis === 2 ? 1 : staircase));
            this.#faces.depth.push(distance / 2);
          } else if (way === 1) {
            left.push(cell);
            right.push(other);
            nearness.push(1 / (distance * distance));
          }
        }
      }
    }
    return { left, right, nearness };
  }

  /** One explicit step; 30 seconds is stable for voxels of 8 mm. */
  advance(seconds: number, around: TruthAir): void {
    const { celsius } = this;
    const conductivity = this.#conductivity;
    const capacity = this.#capacity;
    const flow = this.#flow;
    const { conductivityFactor } = this.roast;
    for (let cell = 0; cell < celsius.length; cell += 1) {
      const here = celsius[cell]!;
      const kind = this.#kinds[cell]!;
      conductivity[cell] = conductivityOf(kind, here) * conductivityFactor;
      capacity[cell] = capacityOf(kind, here);
      flow[cell] = 0;
    }
    for (let link = 0; link < this.#left.length; link += 1) {
      const a = this.#left[link]!;
      const b = this.#right[link]!;
      const ka = conductivity[a]!;
      const kb = conductivity[b]!;
      const gain =
        ((2 * ka * kb) / (ka + kb)) * this.#nearness[link]! * (celsius[b]! - celsius[a]!);
      flow[a]! += gain;
      flow[b]! -= gain;
    }
    for (let face = 0; face < this.#skin.length; face += 1) this.#exchange(face, seconds, around);
    for (let cell = 0; cell < celsius.length; cell += 1)
      celsius[cell]! += (seconds * flow[cell]!) / capacity[cell]!;
  }

  /** The skin holds no heat; two Newton steps balance it, and what passes goes to the voxel behind. */
  #exchange(face: number, seconds: number, around: TruthAir): void {
    const cell = this.#faces.cell[face]!;
    const { surfaceWater, wetShare, seep } = this.roast;
    const behind = this.celsius[cell]!;
    const link = this.#conductivity[cell]! / this.#faces.depth[face]!;
    const share = this.#faces.shaded[face] === 1 ? around.shade : 1;
    const full = Math.min(1, this.#water[face]! / Math.max(1e-6, surfaceWater));
    const wet = wetShare * wetness[this.#kinds[cell] as 0 | 1 | 2] * (0.25 + 0.75 * full);
    const draw = wet * around.damp * around.convection * 0.0155;
    const glow = around.emissivity * 5.67e-8;
    const wall = (around.wallCelsius + 273.15) ** 4;
    let skin = this.#skin[face]!;
    for (let round = 0; round < 2; round += 1) {
      const pressure = vapourPressure(skin);
      const slope = vapourPressure(skin + 0.5) - pressure;
      const excess = Math.max(0, pressure - around.vapour);
      const absolute = skin + 273.15;
      const square = absolute * absolute;
      const net =
        share *
          (around.convection * (around.airCelsius - skin) +
            glow * (wall - square * square) -
            draw * excess) +
        link * (behind - skin);
      const steep =
        share *
          (around.convection + 4 * glow * square * absolute + (excess > 0 ? 2 * draw * slope : 0)) +
        link;
      skin = Math.min(280, skin + net / steep);
    }
    const evaporated = Math.max(0, draw * (vapourPressure(skin) - around.vapour)) / 2.33e6;
    this.#skin[face] = skin;
    const area = this.#faces.area[face]!;
    // Warm muscle gives up juice toward the surface; it slows as the outside is spent.
    const fed = seep * Math.max(0, behind - 20);
    this.#water[face] = Math.max(
      0,
      Math.min(surfaceWater, this.#water[face]! + (fed - evaporated) * seconds),
    );
    this.lostKilograms += evaporated * area * share * seconds;
    this.#flow[cell]! += (area / this.#volume) * link * (skin - behind);
  }

  /** The coldest voxel. */
  get coreCelsius(): number {
    return this.celsius[this.#coldest()]!;
  }

  get coldestPlace(): [number, number, number] {
    const cell = this.#coldest();
    const along = (axis: 0 | 1 | 2): number =>
      (this.#places[3 * cell + axis]! + 0.5) * this.#voxel[axis]!;
    return [along(0), along(1), along(2)];
  }

  #coldest(): number {
    let best = 0;
    for (let cell = 1; cell < this.celsius.length; cell += 1)
      if (this.celsius[cell]! < this.celsius[best]!) best = cell;
    return best;
  }

  /** Trilinear between voxel middles; outside the body the nearest inside is kept. */
  probe(place: readonly [number, number, number]): number {
    const [dx, dy, dz] = this.#voxel;
    const [nx, ny, nz] = this.#counts;
    const fx = place[0] / dx - 0.5;
    const fy = place[1] / dy - 0.5;
    const fz = place[2] / dz - 0.5;
    let sum = 0;
    let weight = 0;
    for (let corner = 0; corner < 8; corner += 1) {
      const x = Math.floor(fx) + (corner & 1);
      const y = Math.floor(fy) + ((corner >> 1) & 1);
      const z = Math.floor(fz) + (corner >> 2);
      if (x < 0 || y < 0 || z < 0 || x >= nx || y >= ny || z >= nz) continue;
      const cell = this.#index[this.#at(x, y, z)]!;
      if (cell === none) continue;
      const share = (1 - Math.abs(fx - x)) * (1 - Math.abs(fy - y)) * (1 - Math.abs(fz - z));
      sum += share * this.celsius[cell]!;
      weight += share;
    }
    return weight > 0 ? sum / weight : this.coreCelsius;
  }
}

/** Antoine's equation for water (constants from memory), mmHg to pascals. */
const antoine = (celsius: number): number =>
  celsius < 100
    ? 133.322 * 10 ** (8.07131 - 1730.63 / (233.426 + celsius))
    : 133.322 * 10 ** (8.14019 - 1810.94 / (244.485 + celsius));
const pressures = Float64Array.from({ length: 1400 }, (_, row) => antoine(row / 4 - 50));

function vapourPressure(celsius: number): number {
  const place = Math.max(0, Math.min(1398, (celsius + 50) * 4));
  const row = Math.floor(place);
  return pressures[row]! + (pressures[row + 1]! - pressures[row]!) * (place - row);
}

const conductivityOf = (kind: number, celsius: number): number =>
  kind === meat ? 0.43 + 0.0009 * Math.min(celsius, 70) : kind === fat ? 0.21 : 0.42;
/**
 * Ice in lean beef below where it begins to freeze, by the form that ASHRAE prints (Refrigeration, thermal properties
 * of foods; figures from memory): of 0.72 water some 0.08 is bound, and of the rest 1 - t0/t is ice at t.
 */
const freezingCelsius = -1.7;
const freezableShare = 0.64;
const fusion = 3.336e5;
/** J/(m³ K): what is frozen already holds half the heat of water, and more of it melts with each degree. */
const icyCapacityOf = (celsius: number): number => {
  const ice = freezableShare * (1 - freezingCelsius / celsius);
  const melting = (freezableShare * -freezingCelsius) / (celsius * celsius);
  return 3.5e6 - 2.1e3 * density[meat] * ice + fusion * density[meat] * melting;
};

/** J/(m³ K). Fat melts about 30 to 45 °C, muscle proteins take up some heat as they set. */
const capacityOf = (kind: number, celsius: number): number =>
  kind === meat
    ? celsius < freezingCelsius
      ? icyCapacityOf(celsius)
      : 3.5e6 + (celsius > 55 && celsius < 75 ? 2.5e5 : 0)
    : kind === fat
      ? 2.1e6 + (celsius > 30 && celsius < 45 ? 1.5e6 : 0)
      : 2.4e6;
