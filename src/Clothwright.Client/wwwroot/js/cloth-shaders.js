// The cloth on the graphics card: each pixel by itself, from the numbers of cloth-places.js and cloth-light.js.

export const VERTEX = `#version 300 es
void main() {
  vec2 corner = vec2(gl_VertexID == 1 ? 3.0 : -1.0, gl_VertexID == 2 ? 3.0 : -1.0);
  gl_Position = vec4(corner, 0.0, 1.0);
}`;

export const FRAGMENT = `#version 300 es
precision highp float;
precision highp int;
precision highp sampler2D;
precision highp usampler2D;

uniform usampler2D uCells;
uniform bool uWords;        // cells packed 32 to a word, or one by one
uniform ivec2 uRepeat;
uniform uint uBack;
uniform sampler2D uLines;   // rows 0, 1: columns of points; 2, 3: rows of points; 4, 5: spans of pixels
uniform sampler2D uThreads; // two texels a thread, 512 threads a row
uniform int uFirstPick;
uniform sampler2D uPlaces;  // first thread and width of each place, 1024 a row
uniform int uFirstRow;
uniform sampler2D uLooks;   // six texels and one of exposure a row
uniform sampler2D uStretches;
uniform sampler2D uLights;
uniform sampler2D uFar;
uniform vec3 uBehind;
uniform vec3 uHeights;      // crimp of warp and weft, thickness
uniform float uStreaks;
uniform float uNear;
uniform int uFine;
uniform bool uTurned;
out vec4 colour;

const float AMBIENT = 0.35;
const float KEY = 0.65;
const float GAP_LIGHT = 0.62;
const float RIM_SHARE = 0.35;
const float SLUB_STEP = 1.0 / 7.0;
const float THIN_STEP = 1.0 / 2.3;
const float STREAK_STEP = 1.0 / 1.4;
const float STREAKS_ACROSS = 3.5;
const float PILE_STEP = 1.0 / 0.28;
const float PILE_EDGE = 0.45;
const float GLINT_STEP = 1.0 / 1.1;
const int MOST_PLACES = 9;

uint mixed(uint value) {
  uint state = value * 747796405u + 2891336453u;
  uint word = ((state >> ((state >> 28) + 4u)) ^ state) * 277803737u;
  return (word >> 22) ^ word;
}

float unit(uint at, uint seed) {
  return float(mixed(at ^ seed) >> 8) * (2.0 / 16777216.0) - 1.0;
}

float noiseAlong(float at, uint seed) {
  float whole = floor(at);
  float part = at - whole;
  float ease = part * part * (3.0 - 2.0 * part);
  uint at0 = uint(int(whole));
  float a = unit(at0, seed);
  return a + (unit(at0 + 1u, seed) - a) * ease;
}

float noiseOver(float x, float y, uint seed) {
  float whole = floor(x);
  float part = x - whole;
  float ease = part * part * (3.0 - 2.0 * part);
  uint column = uint(int(whole));
  float a = noiseAlong(y, mixed(column ^ seed));
  return a + (noiseAlong(y, mixed((column + 1u) ^ seed)) - a) * ease;
}

float ease(float from, float to, float value) {
  float t = clamp((value - from) / (to - from), 0.0, 1.0);
  return t * t * (3.0 - 2.0 * t);
}

uint cellAt(int column, int row) {
  int c = column % uRepeat.x;
  int r = row % uRepeat.y;
  if (c < 0) c += uRepeat.x;
  if (r < 0) r += uRepeat.y;
  if (!uWords) return texelFetch(uCells, ivec2(c, r), 0).r;
  return ((texelFetch(uCells, ivec2(c >> 5, r), 0).r >> uint(c & 31)) & 1u) ^ uBack;
}

vec4 lookPart(int look, int part) { return texelFetch(uLooks, ivec2(part, look), 0); }

struct Thread { int look; float phase; float way; };

Thread threadAt(int number, float cloth) {
  ivec2 at = ivec2((number & 511) * 2, number >> 9);
  vec4 one = texelFetch(uThreads, at, 0);
  vec4 two = texelFetch(uThreads, at + ivec2(1, 0), 0);
  return Thread(int(one.y >= 0.0 && cloth >= one.z ? one.y : one.x), one.w, two.x);
}

vec3 albedoOf(Thread thread, float cloth) {
  vec4 first = lookPart(thread.look, 0);
  vec4 third = lookPart(thread.look, 2);
  vec3 own = first.rgb;
  if (third.y >= 0.0) {
    float at = cloth * third.z * thread.way + thread.phase;
    own = texelFetch(uStretches, ivec2(min(int((at - floor(at)) * 256.0), 255), int(third.y)), 0).rgb;
  }
  vec4 adapted = lookPart(thread.look, 6);
  return max((own - lookPart(thread.look, 3).rgb * adapted.y) * adapted.x, vec3(0.0));
}

vec3 lightAt(int table, float slope, float across) {
  float y = (slope * 0.5 + 0.5) * 127.0;
  float x = (across * 0.5 + 0.5) * 127.0;
  float row = min(floor(y), 126.0);
  float column = min(floor(x), 126.0);
  float v = y - row;
  float u = x - column;
  ivec2 at = ivec2(int(column), int(row) + table * 128);
  vec3 a = texelFetch(uLights, at, 0).rgb;
  a += (texelFetch(uLights, at + ivec2(1, 0), 0).rgb - a) * u;
  vec3 b = texelFetch(uLights, at + ivec2(0, 1), 0).rgb;
  b += (texelFetch(uLights, at + ivec2(1, 1), 0).rgb - b) * u;
  return a + (b - a) * v;
}

struct Strand { Thread thread; uint seed; float across; float seen; float cloth; float slope; float height; float cover; float slub; };

Strand lay(int number, uint seedOf, float offset, float seen, float cloth, float here, float next, float rise, float slope, float crimp) {
  Strand s;
  s.thread = threadAt(number, cloth);
  vec4 first = lookPart(s.thread.look, 0);
  vec4 second = lookPart(s.thread.look, 1);
  float wanderBy = lookPart(s.thread.look, 4).x;
  s.seed = mixed(seedOf);
  s.slub = second.z > 0.0 ? noiseAlong(seen * SLUB_STEP, s.seed) + 0.6 * noiseAlong(seen * THIN_STEP, s.seed ^ 0x9e3779b9u) : 0.0;
  float wander = wanderBy > 0.0 ? wanderBy * noiseAlong(seen * SLUB_STEP, s.seed ^ 0x85ebca6bu) : 0.0;
  s.across = (offset + wander) / (first.w * 0.5 * (1.0 + second.z * s.slub));
  float away = abs(s.across);
  if (lookPart(s.thread.look, 2).w > 0.0) away += PILE_EDGE * noiseOver(seen * PILE_STEP, s.across * first.w * 0.5 * PILE_STEP, s.seed ^ 0x27d4eb2fu);
  s.cover = second.y > 0.0 ? 1.0 - ease(1.0 - 0.7 * second.y, 1.0 + 0.7 * second.y, away) : (away < 1.0 ? 1.0 : 0.0);
  float bulge = sqrt(max(0.0, 1.0 - s.across * s.across));
  s.height = (here + (next - here) * rise - 0.5) * crimp + second.x * 0.5 * bulge;
  s.seen = seen;
  s.cloth = cloth;
  s.slope = (next - here) * slope;
  return s;
}

vec3 shade(Strand s, bool warp) {
  int look = s.thread.look;
  vec4 first = lookPart(look, 0);
  vec4 second = lookPart(look, 1);
  vec4 third = lookPart(look, 2);
  vec4 fourth = lookPart(look, 3);
  vec4 fifth = lookPart(look, 4);
  float across = clamp(s.across, -1.0, 1.0);
  float slope = s.slope;
  if (second.w > 0.0) slope = clamp(slope + second.w * noiseAlong(s.seen * GLINT_STEP, s.seed ^ 0xc2b2ae35u), -1.0, 1.0);
  vec3 light = lightAt(int(fourth.w), slope, across);
  float shadow = 0.4 + 0.6 * ease(-0.35, 0.5, s.height / uHeights.z);
  shadow += (1.0 - shadow) * second.y * 0.5;
  if (third.x != 0.0) {
    float turns = s.seen * abs(third.x) + ((third.x > 0.0) == warp ? -0.5 : 0.5) * s.across;
    float groove = abs(2.0 * (turns - floor(turns)) - 1.0);
    shadow *= 0.75 + 0.25 * ease(0.0, 0.5, groove);
  }
  float vary = 1.0 + 0.5 * second.z * s.slub;
  if (third.w > 0.0) {
    vary += 0.45 * noiseOver(s.seen * PILE_STEP, s.across * first.w * 0.5 * PILE_STEP, s.seed);
  } else if (uStreaks > 0.0 && fifth.y > 0.0) {
    float slant = (warp ? -fifth.z : fifth.z) / (first.w * 0.5);
    vary += uStreaks * fifth.y * noiseOver((s.across + s.seen * slant) * STREAKS_ACROSS, s.seen * STREAK_STEP, s.seed);
  }
  return albedoOf(s.thread, s.cloth) * (vary * shadow * (AMBIENT + KEY * light.x) + second.y * light.z * RIM_SHARE)
    + fourth.rgb * (KEY * shadow * light.y);
}

vec3 point(int i, int j) {
  vec4 x = texelFetch(uLines, ivec2(i, 0), 0);
  vec4 y = texelFetch(uLines, ivec2(j, 2), 0);
  if (x.x < 0.0 || y.x < 0.0) return uBehind;
  vec4 x2 = texelFetch(uLines, ivec2(i, 1), 0);
  vec4 y2 = texelFetch(uLines, ivec2(j, 3), 0);
  uint here = cellAt(int(x.x), int(y.x));
  uint along = cellAt(int(x.x), int(y.y));
  uint across = cellAt(int(x.y), int(y.x));
  uint end = (here >> 1) & 3u;
  uint pick = (here >> 3) & 3u;
  float up = float(here & 1u);
  float warpNext = ((along >> 1) & 3u) == end ? float(along & 1u) : 0.0;
  float weftNext = ((across >> 3) & 3u) == pick ? 1.0 - float(across & 1u) : 0.0;
  int endNumber = int(x.z) + int(end);
  int pickNumber = int(y.z) + int(pick);
  Strand warp = lay(endNumber, uint(endNumber) * 2u, x.w, y2.z, y2.w, up, warpNext, y2.x, y2.y, uHeights.x);
  Strand weft = lay(uFirstPick + pickNumber, uint(pickNumber) * 2u + 1u, y.w, x2.z, x2.w, 1.0 - up, weftNext, x2.x, x2.y, uHeights.y);
  bool warpAbove = warp.height > weft.height;
  Strand top = weft;
  Strand below = warp;
  if (warpAbove) { top = warp; below = weft; }
  vec3 light = uBehind * GAP_LIGHT;
  if (top.cover < 1.0) {
    if (below.cover > 0.0) light += (shade(below, !warpAbove) - light) * below.cover;
    if (top.cover <= 0.0) return light;
  }
  return light + (shade(top, warpAbove) - light) * top.cover;
}

vec3 nearPixel(ivec2 pixel) {
  vec3 sum = vec3(0.0);
  for (int j = 0; j < uFine; j++) {
    for (int i = 0; i < uFine; i++) sum += point(pixel.x * uFine + i, pixel.y * uFine + j);
  }
  return sum / float(uFine * uFine);
}

int aboveWarp(int column, int row, uint end) {
  uint cell = cellAt(column, row);
  return ((cell >> 1) & 3u) == end ? int(cell & 1u) : 0;
}

int aboveWeft(int column, int row, uint pick) {
  uint cell = cellAt(column, row);
  return ((cell >> 3) & 3u) == pick ? 1 - int(cell & 1u) : 0;
}

float farPart(int look, int part) { return texelFetch(uFar, ivec2(part >> 2, look), 0)[part & 3]; }

vec4 farThread(int number, int above, int before, int after, float cloth) {
  Thread thread = threadAt(number, cloth);
  int level = above > 0 ? 0 : 3;
  int one = level + (before == above ? 0 : 1);
  int two = level + (after == above ? 0 : 2);
  float body = 0.5 * (farPart(thread.look, 1 + 2 * one) + farPart(thread.look, 1 + 2 * two));
  float gloss = 0.5 * (farPart(thread.look, 2 + 2 * one) + farPart(thread.look, 2 + 2 * two));
  return vec4(albedoOf(thread, cloth) * body + lookPart(thread.look, 3).rgb * gloss, farPart(thread.look, 0));
}

vec3 farCell(int column, int row, int firstEnd, int firstPick, vec2 middle) {
  uint here = cellAt(column, row);
  uint end = (here >> 1) & 3u;
  uint pick = (here >> 3) & 3u;
  int up = int(here & 1u);
  int right = uTurned ? -1 : 1;
  vec4 warp = farThread(firstEnd + int(end), up, aboveWarp(column, row - 1, end), aboveWarp(column, row + 1, end), middle.y);
  vec4 weft = farThread(uFirstPick + firstPick + int(pick), 1 - up, aboveWeft(column - right, row, pick), aboveWeft(column + right, row, pick), middle.x);
  vec4 top = up > 0 ? warp : weft;
  vec4 below = up > 0 ? weft : warp;
  vec3 light = uBehind * GAP_LIGHT;
  light += (below.rgb - light) * below.a;
  return light + (top.rgb - light) * top.a;
}

vec3 farPixel(ivec2 pixel) {
  vec4 x = texelFetch(uLines, ivec2(pixel.x, 4), 0);
  vec4 y = texelFetch(uLines, ivec2(pixel.y, 5), 0);
  if (x.w <= 0.0 || y.w <= 0.0) return uBehind;
  int firstX = int(floor(x.x));
  int wholeX = int(ceil(x.y)) - firstX;
  int firstY = int(floor(y.x));
  int wholeY = int(ceil(y.y)) - firstY;
  vec3 sum = vec3(0.0);
  float weight = 0.0;
  for (int j = 0; j < min(wholeY, MOST_PLACES); j++) {
    int row = wholeY <= MOST_PLACES ? firstY + j : firstY + j * wholeY / MOST_PLACES;
    int atRow = uFirstRow + row;
    vec4 rowPlace = texelFetch(uPlaces, ivec2(atRow & 1023, atRow >> 10), 0);
    float shareY = (min(y.y, float(row + 1)) - max(y.x, float(row))) * rowPlace.y;
    for (int i = 0; i < min(wholeX, MOST_PLACES); i++) {
      int column = wholeX <= MOST_PLACES ? firstX + i : firstX + i * wholeX / MOST_PLACES;
      vec4 columnPlace = texelFetch(uPlaces, ivec2(column & 1023, column >> 10), 0);
      float share = (min(x.y, float(column + 1)) - max(x.x, float(column))) * columnPlace.y * shareY;
      if (share <= 0.0) continue;
      sum += share * farCell(column, row, int(columnPlace.x), int(rowPlace.x), vec2(x.z, y.z));
      weight += share;
    }
  }
  return weight > 0.0 ? uBehind + (sum / weight - uBehind) * (x.w * y.w) : uBehind;
}

vec3 encode(vec3 light) {
  vec3 l = clamp(light, 0.0, 1.0);
  return mix(12.92 * l, 1.055 * pow(max(l, vec3(1e-9)), vec3(1.0 / 2.4)) - 0.055, step(vec3(0.0031308), l));
}

void main() {
  ivec2 pixel = ivec2(gl_FragCoord.xy);
  vec3 light = uNear > 0.0 ? nearPixel(pixel) : vec3(0.0);
  if (uNear < 1.0) {
    vec3 distant = farPixel(pixel);
    light = distant + (light - distant) * uNear;
  }
  colour = vec4(encode(light), 1.0);
}`;
