type EastAsian = 'shift_jis' | 'gb18030';

/** How likely a character is, by the block of the code table that its bytes stand in. */
const KANA = 1;
const IDEOGRAPH = 0.6;
const SIGN = 0.4;
const HALF_WIDTH = 0.5;
/** Half-width doubling, lengthening and voicing marks, which hardly anything else is full of. */
const HALF_WIDTH_MARK = 1;
const RARE = -0.4;
const FAR_FETCHED = -1;
/** What a common ideograph is worth beyond any other. */
const COMMON_WORTH = 0.6;

const HALF_WIDTH_MARKS: ReadonlySet<number> = new Set([0xaf, 0xb0, 0xde, 0xdf]);

/** Ideographs of headings, metals, fasteners and places to put them, simplified, traditional and Japanese. */
const COMMON =
  /[的一二三四五六七八九十数數量名称稱规規格型号號品番材料质質厚度孔径徑备備注考螺母柱钉釘板钢鋼铁鉄鐵铝鋁铜銅不锈銹镀鍍锌锌鋅表面处處理单單价価合计計个個件序部穴端距离離边邊中心图圖图図压圧壓铆鉚圆円长長宽幅高重左右上下前后後内外安装取付位置员員供应应應商厂厰门門盖蓋箱体體机機架支座轴軸线線标標准準说说明明白黒黑套条卷只块片根孔色无無有出力形式]/g;

/**
 * Sum of what the characters beyond ASCII are worth when the bytes are read in an East Asian encoding: kana and common
 * ideographs speak for it, rare ones and those that swallow a Latin letter in the middle of a word against it.
 */
export function scoreEastAsian(bytes: Uint8Array, text: string, encoding: EastAsian): number {
  const readCharacter = encoding === 'shift_jis' ? readJapanese : readChinese;
  let sum = COMMON_WORTH * (text.match(COMMON)?.length ?? 0);
  let at = 0;
  let isAfterLetter = false;
  while (at < bytes.length) {
    if (bytes[at]! < 0x80) {
      isAfterLetter = isSmallLetter(bytes[at++]!);
      continue;
    }
    const { length, worth } = readCharacter(bytes, at);
    sum += isAfterLetter && isLetterLost(bytes, at, length) ? Math.min(worth, FAR_FETCHED) : worth;
    isAfterLetter = false;
    at += length;
  }
  return sum;
}

interface Character {
  /** Bytes read. */
  readonly length: number;
  readonly worth: number;
}

/** Bytes that fit nothing are worth nothing here: the misfits in the text count against the encoding already. */
const MISFIT: Character = { length: 1, worth: 0 };

function readJapanese(bytes: Uint8Array, at: number): Character {
  const lead = bytes[at]!;
  const trail = bytes[at + 1] ?? 0;
  if (isHalfWidthKana(lead)) {
    const isAlone = !isHalfWidthKana(bytes[at - 1] ?? 0) && !isHalfWidthKana(trail);
    if (isAlone) return { length: 1, worth: FAR_FETCHED };
    return { length: 1, worth: HALF_WIDTH_MARKS.has(lead) ? HALF_WIDTH_MARK : HALF_WIDTH };
  }
  if (lead === 0x80 || lead === 0xa0 || lead > 0xfc || trail < 0x40 || trail === 0x7f || trail > 0xfc) return MISFIT;
  return { length: 2, worth: worthInJapanese(lead, trail) };
}

function worthInJapanese(lead: number, trail: number): number {
  const code = lead * 256 + trail;
  if (code >= 0x829f && code <= 0x8396) return KANA;
  if (lead === 0x81 || lead === 0x82 || lead === 0x87) return SIGN;
  if (code >= 0x889f && code <= 0x9872) return IDEOGRAPH;
  return RARE;
}

function readChinese(bytes: Uint8Array, at: number): Character {
  const lead = bytes[at]!;
  const trail = bytes[at + 1] ?? 0;
  if (isDigit(trail)) return isDigit(bytes[at + 3] ?? 0) ? { length: 4, worth: FAR_FETCHED } : MISFIT;
  if (lead === 0x80 || lead === 0xff || trail < 0x40 || trail === 0x7f || trail === 0xff) return MISFIT;
  return { length: 2, worth: worthInChinese(lead, trail) };
}

function worthInChinese(lead: number, trail: number): number {
  if (trail < 0xa1) return FAR_FETCHED;
  if (lead >= 0xa1 && lead <= 0xa9) return SIGN;
  if (lead >= 0xb0 && lead <= 0xd7) return IDEOGRAPH;
  return lead >= 0xd8 ? RARE : FAR_FETCHED;
}

/** A Latin letter follows, or is the second byte: after a letter, rather an accented letter within a word. */
function isLetterLost(bytes: Uint8Array, at: number, length: number): boolean {
  return isSmallLetter(bytes[at + length] ?? 0) || (length === 2 && isSmallLetter(bytes[at + 1] ?? 0));
}

function isHalfWidthKana(byte: number): boolean {
  return byte >= 0xa1 && byte <= 0xdf;
}

function isDigit(byte: number): boolean {
  return byte >= 0x30 && byte <= 0x39;
}

function isSmallLetter(byte: number): boolean {
  return byte >= 0x61 && byte <= 0x7a;
}
