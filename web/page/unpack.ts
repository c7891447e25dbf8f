// Unpacks LZMA: it holds the engine in a fifth fewer bytes than gzip, the best that browsers unpack by themselves. After the
// specification of the format in the LZMA SDK (Igor Pavlov, public domain): https://www.7-zip.org/sdk.html

/** Chances are counted in 2048ths. */
const halfChance = 1024;
const states = 12;
const positionStates = 16;
const literalChances = 0x300;

/** States tell what was unpacked last; from this one on it was a repetition. */
const firstAfterRepetition = 7;

const lengthChances = 2 + 2 * 8 * positionStates + 256;

// Where each group of chances begins in the one array that holds them all.
const isRepetition = 0;
const isRecent = isRepetition + states * positionStates;
const isNotLast = isRecent + states;
const isNotSecond = isNotLast + states;
const isNotThird = isNotSecond + states;
const isLong = isNotThird + states;
const distanceSlots = isLong + states * positionStates;
const distanceBits = distanceSlots + 4 * 64;
const distanceEnds = distanceBits + 128;
const newLengths = distanceEnds + 16;
const recentLengths = newLengths + lengthChances;
const literals = recentLengths + lengthChances;

/** Reads bits, of which each took the less room the likelier it was; every bit read makes its like likelier. */
function bitReader(packed: Uint8Array, at: number, count: number) {
  const chances = new Uint16Array(count).fill(halfChance);
  // Range and code. Outside of such an array every number of 32 bits is an object of its own until the loops are compiled.
  const now = new Uint32Array(2) as unknown as [number, number];

  function refill(): void {
    if (now[0] >= 0x1000000) return;
    now[0] <<= 8;
    now[1] = (now[1] << 8) | (packed[at++] ?? 0);
  }

  function bit(place: number): number {
    const chance = chances[place] ?? halfChance;
    const bound = (now[0] >>> 11) * chance;
    let bit = 0;
    if (now[1] < bound) {
      now[0] = bound;
      chances[place] = chance + ((2048 - chance) >> 5);
    } else {
      now[0] -= bound;
      now[1] -= bound;
      chances[place] = chance - (chance >> 5);
      bit = 1;
    }
    refill();
    return bit;
  }

  for (let i = 0; i < 5; ++i) refill();
  now[0] = 0xffffffff;
  return {
    bit,

    /** A number of that many bits, its highest bit first. */
    tree(place: number, bits: number): number {
      let node = 1;
      for (let i = 0; i < bits; ++i) node = (node << 1) | bit(place + node);
      return node - (1 << bits);
    },

    /** The same, its lowest bit first. */
    treeFromLowest(place: number, bits: number): number {
      let node = 1;
      let number = 0;
      for (let i = 0; i < bits; ++i) {
        const next = bit(place + node);
        node = (node << 1) | next;
        number |= next << i;
      }
      return number;
    },

    /** Bits that are as likely set as not. */
    plain(bits: number): number {
      let number = 0;
      for (let i = 0; i < bits; ++i) {
        now[0] >>>= 1;
        const next = now[1] >= now[0] ? 1 : 0;
        if (next === 1) now[1] -= now[0];
        number = number * 2 + next;
        refill();
      }
      return number;
    },
  };
}

/**
 * @param packed one LZMA stream behind its header, which has to give the length of what was packed
 * @throws where `packed` is not long enough for a header, or plainly damaged; not every damage shows
 */
export function unpack(packed: Uint8Array): Uint8Array<ArrayBuffer> {
  const header = new DataView(packed.buffer, packed.byteOffset, 13);
  const properties = header.getUint8(0);
  const contextBits = properties % 9;
  const placeMask = (1 << (Math.floor(properties / 9) % 5)) - 1;
  const positionMask = (1 << Math.floor(properties / 45)) - 1;
  const literalGroups = (placeMask + 1) << contextBits;

  const result = new Uint8Array(header.getUint32(5, true));
  const reader = bitReader(packed, 13, literals + literalChances * literalGroups);

  function literal(at: number, state: number, matched: number): number {
    const before = result[at - 1] ?? 0;
    const group = ((at & placeMask) << contextBits) + (before >> (8 - contextBits));
    const place = literals + literalChances * group;
    // As long as it is what would have gone on repeating, that byte tells something of this one.
    let likely = state >= firstAfterRepetition ? 0x100 : 0;
    let symbol = 1;
    while (symbol < 0x100) {
      matched <<= 1;
      const expected = matched & likely;
      const next = reader.bit(place + likely + expected + symbol);
      symbol = (symbol << 1) | next;
      if (next !== expected >> 8) likely = 0;
    }
    return symbol & 0xff;
  }

  function length(place: number, positionState: number): number {
    if (reader.bit(place) === 0) return 2 + reader.tree(place + 2 + 8 * positionState, 3);
    if (reader.bit(place + 1) === 0)
      return 10 + reader.tree(place + 2 + 8 * (positionStates + positionState), 3);
    return 18 + reader.tree(place + 2 + 2 * 8 * positionStates, 8);
  }

  function distance(repeated: number): number {
    const slot = reader.tree(distanceSlots + 64 * Math.min(repeated - 2, 3), 6);
    if (slot < 4) return slot;
    const bits = (slot >> 1) - 1;
    const base = (2 | (slot & 1)) * 2 ** bits;
    if (slot < 14) return base + reader.treeFromLowest(distanceBits + base - slot, bits);
    return base + reader.plain(bits - 4) * 16 + reader.treeFromLowest(distanceEnds, 4);
  }

  let state = 0;
  /** How far back the last four repetitions reached, less one; the last one first. */
  const recent = [0, 0, 0, 0];
  let at = 0;
  while (at < result.length) {
    const positionState = at & positionMask;
    const place = state * positionStates + positionState;

    if (reader.bit(isRepetition + place) === 0) {
      result[at] = literal(at, state, result[at - (recent[0] ?? 0) - 1] ?? 0);
      ++at;
      state = state < 4 ? 0 : state < 10 ? state - 3 : state - 6;
      continue;
    }

    let repeated = 1;
    const afterRepetition = state >= firstAfterRepetition;
    if (reader.bit(isRecent + state) === 0) {
      repeated = length(newLengths, positionState);
      recent.unshift(distance(repeated));
      recent.pop();
      state = afterRepetition ? 10 : 7;
    } else {
      const notLast = reader.bit(isNotLast + state) === 1;
      if (!notLast && reader.bit(isLong + place) === 0) {
        state = afterRepetition ? 11 : 9;
      } else {
        if (notLast) {
          const which = reader.bit(isNotSecond + state) === 0 ? 1 : 2 + reader.bit(isNotThird + state);
          recent.unshift(...recent.splice(which, 1));
        }
        repeated = length(recentLengths, positionState);
        state = afterRepetition ? 11 : 8;
      }
    }
    const from = at - (recent[0] ?? 0) - 1;
    if (from < 0) throw new Error("what was packed is damaged");
    for (let i = 0; i < repeated; ++i) result[at + i] = result[from + i] ?? 0;
    at += repeated;
  }
  return result;
}
