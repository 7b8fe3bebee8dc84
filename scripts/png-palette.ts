/**
 * Makes a screenshot small: flat paper and ink need no more than 256 colours. Reads and writes PNG (ISO/IEC
 * 15948: 8-bit truecolour in, indexed colour out, no interlace), which is all a browser's picture is.
 */
import { crc32, deflateSync, inflateSync } from 'node:zlib';

const signature = Buffer.from([137, 80, 78, 71, 13, 10, 26, 10]);
const paletteAtMost = 256;

interface Raster {
  width: number;
  height: number;
  /** Three bytes a pixel. */
  rgb: Buffer;
}

export function smaller(png: Buffer): Buffer {
  const { width, height, rgb } = decoded(png);
  const { palette, indexOf } = paletteOf(rgb);
  const lines = Buffer.alloc(height * (width + 1));
  for (let y = 0; y < height; y += 1)
    for (let x = 0; x < width; x += 1) {
      const at = 3 * (y * width + x);
      lines[y * (width + 1) + 1 + x] = indexOf(rgb.readUIntBE(at, 3));
    }
  const head = Buffer.alloc(13);
  head.writeUInt32BE(width, 0);
  head.writeUInt32BE(height, 4);
  head.set([8, 3, 0, 0, 0], 8);
  return Buffer.concat([
    signature,
    chunk('IHDR', head),
    chunk('PLTE', Buffer.from(palette.flatMap((c) => [c >> 16, (c >> 8) & 255, c & 255]))),
    chunk('IDAT', deflateSync(lines, { level: 9 })),
    chunk('IEND', Buffer.alloc(0)),
  ]);
}

/** The commonest colours, and for any other the nearest of them. */
function paletteOf(rgb: Buffer): { palette: number[]; indexOf(colour: number): number } {
  const counts = new Map<number, number>();
  for (let at = 0; at < rgb.length; at += 3) {
    const colour = rgb.readUIntBE(at, 3);
    counts.set(colour, (counts.get(colour) ?? 0) + 1);
  }
  const palette = [...counts]
    .sort((a, b) => b[1] - a[1])
    .slice(0, paletteAtMost)
    .map(([colour]) => colour);
  const known = new Map(palette.map((colour, index) => [colour, index]));
  const indexOf = (colour: number): number => {
    const found = known.get(colour);
    if (found !== undefined) return found;
    let best = 0;
    for (const [index, other] of palette.entries())
      if (distance(colour, other) < distance(colour, palette[best]!)) best = index;
    known.set(colour, best);
    return best;
  };
  return { palette, indexOf };
}

function distance(a: number, b: number): number {
  const part = (shift: number): number => ((a >> shift) & 255) - ((b >> shift) & 255);
  return part(16) ** 2 + part(8) ** 2 + part(0) ** 2;
}

function decoded(png: Buffer): Raster {
  if (!png.subarray(0, 8).equals(signature)) throw new Error('no PNG');
  const width = png.readUInt32BE(16);
  const height = png.readUInt32BE(20);
  const [bits, type, , , interlace] = png.subarray(24, 29);
  if (bits !== 8 || (type !== 2 && type !== 6) || interlace !== 0)
    throw new Error('only 8-bit truecolour without interlace is read');
  const bytes = type === 6 ? 4 : 3;
  const lines = unfiltered(inflateSync(dataOf(png)), { stride: width * bytes, bytes, height });
  const rgb = Buffer.alloc(width * height * 3);
  for (let n = 0; n < width * height; n += 1) lines.copy(rgb, 3 * n, bytes * n, bytes * n + 3);
  return { width, height, rgb };
}

function dataOf(png: Buffer): Buffer {
  const parts: Buffer[] = [];
  for (let at = 8; at < png.length; ) {
    const length = png.readUInt32BE(at);
    if (png.toString('latin1', at + 4, at + 8) === 'IDAT')
      parts.push(png.subarray(at + 8, at + 8 + length));
    at += length + 12;
  }
  return Buffer.concat(parts);
}

/** Takes back the five filters (ISO/IEC 15948, clause 9.2). */
function unfiltered(
  data: Buffer,
  { stride, bytes, height }: { stride: number; bytes: number; height: number },
): Buffer {
  const out = Buffer.alloc(stride * height);
  for (let y = 0; y < height; y += 1) {
    const filter = data[y * (stride + 1)];
    for (let x = 0; x < stride; x += 1) {
      const raw = data[y * (stride + 1) + 1 + x]!;
      const left = x >= bytes ? out[y * stride + x - bytes]! : 0;
      const up = y > 0 ? out[(y - 1) * stride + x]! : 0;
      const corner = x >= bytes && y > 0 ? out[(y - 1) * stride + x - bytes]! : 0;
      out[y * stride + x] = raw + predicted(filter, { left, up, corner });
    }
  }
  return out;
}

function predicted(
  filter: number | undefined,
  { left, up, corner }: { left: number; up: number; corner: number },
): number {
  switch (filter) {
    case 0:
      return 0;
    case 1:
      return left;
    case 2:
      return up;
    case 3:
      return (left + up) >> 1;
    case 4: {
      const [a, b, c] = [
        Math.abs(up - corner),
        Math.abs(left - corner),
        Math.abs(left + up - 2 * corner),
      ];
      return a <= b && a <= c ? left : b <= c ? up : corner;
    }
    default:
      throw new Error(`there is no filter ${filter}`);
  }
}

function chunk(name: string, data: Buffer): Buffer {
  const body = Buffer.concat([Buffer.from(name, 'latin1'), data]);
  const out = Buffer.alloc(data.length + 12);
  out.writeUInt32BE(data.length, 0);
  body.copy(out, 4);
  out.writeUInt32BE(crc32(body), data.length + 8);
  return out;
}
