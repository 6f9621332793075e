/*
 * The lean run of a bed in C: app/core/season/watchSeason.ts with the day of day.ts, dayEvents.ts,
 * dayDecay.ts, dayPlants.ts and what they call, term by term. It stands for nothing by itself: the
 * benchmark holds the engine's speed against it, after both were seen to give the same numbers.
 *
 *     kernel FILE check          pools and flows of every day, one day a line
 *     kernel FILE time RUNS      nanoseconds of the fastest of RUNS runs, and of all together
 *     kernel FILE parts RUNS     how often each part of the day was met at work; only where it was
 *                                compiled with -DPARTS, which slows it a little
 *
 * FILE is written by kernelInput.ts. Ends with 1 and a line on stderr where the file is not
 * understood or a flow runs backwards.
 */
#define _XOPEN_SOURCE 700
#include <math.h>
#include <signal.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/time.h>
#include <time.h>

/* Where a run is, for whoever looks in from time to time. */
#define PART_NAMES(X) X(start) X(events) X(plants) X(water) X(losses) X(decay) X(cover) X(uptake) \
  X(harvest) X(keep)
#ifdef PARTS
#define PART(name) part_##name,
enum { PART_NAMES(PART) PART_COUNT };
static volatile sig_atomic_t part;
static volatile long met[PART_COUNT];
#define AT(name) (part = part_##name)
static void look(int signal) {
  (void)signal;
  met[part]++;
}
#else
#define AT(name) ((void)0)
#endif

enum { COVER_RESIDUE, COVER_MICROBES, COVER_HUMUS, COVER_FREE, DUG_RESIDUE, DUG_MICROBES,
  DUG_HUMUS, SLOW, SOIL_ORGANIC, YOUNG_HUMUS, MINERAL_TOP, MINERAL_LOWER, CROP, POOLS };

/* the order of flowKinds in flows.ts */
enum { LAID, LAID_READY, DUG, DUG_READY, SLOW_LAID, SLOW_DUG, RAIN, FIXED, COVER_EATEN,
  COVER_HUMIFIED, COVER_RELEASED, COVER_HELD, SOIL_HELD, AMMONIA, WASHED, DUG_EATEN, DUG_HUMIFIED,
  DUG_RELEASED, DUG_HELD, DIG_RESIDUE, DIG_MICROBES, DIG_HUMUS, DIG_FREE, RAKE_RESIDUE,
  RAKE_MICROBES, RAKE_HUMUS, RAKE_FREE, RAKE_SLOW, SLOW_COVER, SLOW_SOIL, DIG_SLOW, HUMUS_COVER,
  HUMUS_DUG, SOIL, YOUNG, DOWN, LEACHED, DENITRIFIED, TOP_TAKEN, LOWER_TAKEN, TOP_LUXURY,
  LOWER_LUXURY, PICKED, CLEARED_AWAY, TOPS_LEFT, TOPS_DUG, ROOTS_LEFT,
  DEEPER, LESS_DEEP, FLOWS };

enum { GREEN, MATURE, SLOW_MATERIAL, INERT, WOOD };
enum { COMPOST, MANURE, MEAL };
enum { ON_TOP, HOED_IN, DUG_IN };
enum { JUST_CUT, LIMP, CRISP };
enum { TOPS_STAY, TOPS_DUG_IN, TOPS_TAKEN, PULLED };
enum { RAKE_OFF, DIG_COVER_IN, WATER, HARVEST };
enum { MOST_CLASSES = 64, MOST_PLANTS = 32, MOST_ARREARS = 64 };

#define COEFFICIENTS(X) \
  X(decayBase) X(decayPerCarbonToNitrogen) X(woodDecay) X(assimilation) X(humusCarbonToNitrogen) \
  X(greenMicrobeBase) X(greenMicrobeSlope) X(greenMicrobeFactor) X(greenHumusSlope) \
  X(greenHumusHalf) X(greenHumusFactor) X(greenTurnover) X(matureMicrobeBase) \
  X(matureMicrobeSlope) X(matureHumusSlope) X(matureHumusHalf) X(matureTurnover) \
  X(microbeMinimum) X(humusShareLimit) X(humusTurnoverLimit) X(leastDecayWhenStarved) \
  X(hoedRate) X(surfaceRateGreen) X(surfaceRateMatureShare) X(coverFreeShareForTieUp) \
  X(soilShareForCoverTieUp) X(slowRate) X(mealRate) X(youngHumusRate) X(rootCarbonToNitrogen) \
  X(lyingShareOfMicrobesAndHumus) X(coverWaterPerDryMatter) X(coverWaterLimit) \
  X(coverDryWetness) X(coverFractionPerKilogram) X(ammoniaSlope) X(ammoniaIntercept) \
  X(ammoniaLimit) X(ammoniaRipening) X(ammoniaLeaving) X(ammoniaDryShare) X(ammoniaWetSlope) \
  X(ammoniaLimp) X(ammoniaCrisp) X(ammoniaFreeShare) X(ammoniaFactor) X(soilCarbonToNitrogen) \
  X(manureAmmoniaShare) X(manureAmmoniaRate) \
  X(organicMatterPerCarbon) X(soilReleaseRate) X(bareCropCoefficient) X(canopyLimit) \
  X(lateCanopyLeast) X(evaporationUnderCanopy) X(coverEvaporationSaving) X(evaporationDepth) \
  X(readilyEvaporableShare) X(lowerLayerUptakeWeight) X(soilWarmingRate) X(coverDamping) \
  X(coverCooling) X(washBase) X(washDepth) X(washLeastMass) X(denitrifiedShare) \
  X(denitrificationDrainage) X(rainNitrogenPerYear) X(startingMineralTop) \
  X(startingMineralPer30) X(arrearsDays) X(uptakeShare) X(uptakeFloor) X(luxuryShare) \
  X(luxuryStart) X(luxuryFull) X(harvestLimit)

typedef struct {
#define FIELD(name) double name;
  COEFFICIENTS(FIELD)
} Coefficients;

typedef struct {
  double share, startDay, firstHarvestDay, usualEndDay, clearingDay, normalDegreeDays;
  int isCleared, topsFate, logsHarvest, hasLegume, noNodules, residueIsGreen;
  double need, harvestNitrogen, harvestGramsPerKilogram, rootShare, curveMiddle, curveSteepness;
  double baseCelsius, usualDays, firstHarvestDays, flowerDays, fullRootDepth;
  double kcStart, kcMiddle, kcEnd, stages[4], depletionShare, residueCarbonToNitrogen;
  double usualShareFixed, highShareFixed, nodulationDays, leafyLimit, poddingLimit;
} Planting;

typedef struct {
  int index, material, kind, placement, condition, slowKind;
  double fresh, dry, nitrogen, carbon, laidDepth, mineralShare, slowShare;
} Layer;

typedef struct { int index, kind, planting; double size; } Event;

/* Everything of a bed, and what of it does not change from day to day. */
typedef struct {
  Coefficients c;
  int days, keptMoist, flowFrom[FLOWS], flowTo[FLOWS];
  double firstDay, today, curveNumber, lowerDepth, topFull, topWilt, lowerFull, lowerWilt, rainOfYear;
  double fieldCapacity, wiltingPoint, bulkDensity, organicMatter, startingTop;
  double *rain, *evapotranspiration, *mean, *airFactor;
  int plantings, layers, events, seasonStarts;
  Planting *planting;
  Layer *layer;
  Event *event;
  int *seasonStart;
  /* depth, field capacity and wilting point of the lower layer from each season's start on */
  double (*lowerLayer)[3];
  unsigned char *isBusy;
} Bed;

typedef struct {
  char key[48];
  int kind, placement, isLeftOver;
  double crumb, cn, decay, turnover, microbeCn, humusShare, humusCn, inResidue, inMicrobes, inHumus;
  double residue, microbes, humus, lyingFactor, lyingDry;
  double soilRate, surfaceRate, residueDays, turnoverDays, turned, lost, decayed, gone, spread, atNoYield, perYield;
  double afterResidue, afterMicrobes, afterHumus, eaten, humified, released, wanted, fromSoil;
} Class;

typedef struct {
  int standing, done, arrearsCount;
  double curveStart, curveRise, fullReach, degreeDays, progress, wanted, rootDepth, nitrogen;
  double needSoFar, metSoFar, harvested, removed, left, fixed, uptake, luxury;
  double needToday, uptakeToday, fixedToday, arrears[MOST_ARREARS];
} Plant;

typedef struct {
  double nitrogen[POOLS + 1];
  Class classes[MOST_CLASSES];
  Plant plants[MOST_PLANTS];
  int classCount;
  double topActive, topInert, dugActive, topQuick, dugQuick, slowLyingDry, slowLyingFactor;
  double unripe, ripe, manure, waterTop, waterLower, waterCover, soilCelsius;
  double lowerDepth, lowerFull, lowerWilt;
  double rain, logged, et0, capacity, hidden, mean, airFactor, soilFactor, dry;
  double transpiration, evaporation, canopy, reach, depletionShare;
  int isPlanted;
  double soilDays, surfaceDays;
  double throughfall, coverMean, drainageTop, drainageLower, dryness, fill;
  double foundTop, foundLower, shareScale;
} State;

/* What a draw keeps of a run. */
typedef struct {
  double *mineralTop, *mineralLower, *rootReach, *released, *tiedUp, *luxury;
  double *dailyNeed[MOST_PLANTS], *dailyUptake[MOST_PLANTS], *dailyFixed[MOST_PLANTS];
  double leached, demand[MOST_PLANTS], met[MOST_PLANTS], fixed[MOST_PLANTS];
} Watch;

static const int released[6] = { SOIL, YOUNG, DUG_RELEASED, SLOW_SOIL, WASHED, DIG_FREE };
static const int tiedUp[2] = { DUG_HELD, SOIL_HELD };
static const int luxury[2] = { TOP_LUXURY, LOWER_LUXURY };

static const double topDepth = 300, carbonOfTops = 0.42, crumb = 1e-6, remnant = 0.5;
static double factorAt15, factorAt1, factorAt20;

static inline double least(double a, double b) { return a < b ? a : b; }
static inline double most(double a, double b) { return a > b ? a : b; }
static inline double held(double low, double high, double x) { return least(high, most(low, x)); }

static void fail(const char *what) {
  fprintf(stderr, "kernel: %s\n", what);
  exit(1);
}

static inline void move(const Bed *bed, State *s, double *flows, int flow, double grams) {
  if (!(grams >= -1e-9)) fail("a flow runs backwards");
  flows[flow] += grams;
  s->nitrogen[bed->flowFrom[flow]] -= grams;
  s->nitrogen[bed->flowTo[flow]] += grams;
}

/* ---- soil/temperature.ts ---- */

static double curve(double celsius) {
  return exp(308.56 * (1 / (10 + 46.02) - 1 / (celsius + 46.02)));
}

static inline double temperatureFactor(double celsius) {
  if (celsius <= -1) return 0;
  if (celsius < 1) return (factorAt1 * (celsius + 1)) / 2;
  return curve(celsius) / factorAt15;
}

/* ---- cover/residueClass.ts, cover/decay.ts, cover/tieUp.ts ---- */

static void turnRatiosRound(Class *item) {
  item->inResidue = 1 / item->cn;
  item->inMicrobes = 1 / item->microbeCn;
  item->inHumus = 1 / item->humusCn;
}

static Class *classFor(const Bed *bed, State *s, int placement, int kind, double cn) {
  const Coefficients *c = &bed->c;
  char key[48];
  for (int at = 0; at < s->classCount; at++) {
    Class *known = &s->classes[at];
    if (known->placement != placement || known->kind != kind) continue;
    if (known->isLeftOver) continue;
    if (known->cn == cn) return known;
    if (fabs(known->cn - cn) > 1e-9 * cn) continue;
    snprintf(key, sizeof key, "%d %d %.9e", placement, kind, cn);
    if (strcmp(key, known->key) == 0) return known;
  }
  if (s->classCount == MOST_CLASSES) fail("too many classes");
  Class *item = &s->classes[s->classCount++];
  memset(item, 0, sizeof *item);
  item->crumb = crumb;
  snprintf(item->key, sizeof item->key, "%d %d %.9e", placement, kind, cn);
  item->placement = placement;
  item->kind = kind;
  item->cn = cn;
  int isGreen = kind == GREEN;
  double moves = kind == INERT ? 0 : 1;
  double microbes = isGreen
    ? most(c->microbeMinimum, c->greenMicrobeBase - c->greenMicrobeSlope / cn) * c->greenMicrobeFactor
    : most(c->microbeMinimum, c->matureMicrobeBase - c->matureMicrobeSlope / cn);
  double humified = isGreen
    ? (1 - (c->greenHumusSlope * cn) / (c->greenHumusHalf + cn)) * c->greenHumusFactor
    : 1 - (c->matureHumusSlope * cn) / (c->matureHumusHalf + cn);
  item->decay = kind == WOOD ? c->woodDecay
    : moves * (c->decayBase + c->decayPerCarbonToNitrogen / cn);
  item->turnover = moves * (isGreen ? c->greenTurnover : c->matureTurnover);
  item->microbeCn = microbes;
  item->humusShare = least(least(humified, c->humusShareLimit), c->humusTurnoverLimit / microbes);
  item->humusCn = c->humusCarbonToNitrogen;
  turnRatiosRound(item);
  item->lyingFactor = 1;
  item->soilRate = placement == DUG_IN ? 1 : placement == HOED_IN ? c->hoedRate : 0;
  item->surfaceRate = placement != ON_TOP ? 0
    : c->surfaceRateGreen * (isGreen ? 1 : c->surfaceRateMatureShare);
  return item;
}

static inline double lyingCarbon(const Class *item, double small) {
  return item->residue + small * (item->microbes + item->humus);
}

static inline void stepAtYield(Class *k, double assimilation) {
  double eaten = k->residue * k->gone;
  double microbes =
    k->microbes * k->turned + assimilation * k->decayed * k->residue * k->turned * k->spread;
  double residue = k->residue - eaten;
  double humus = k->humus + k->humusShare * (k->microbes + assimilation * eaten - microbes);
  k->afterResidue = residue;
  k->afterMicrobes = microbes;
  k->afterHumus = humus;
  k->eaten = (k->residue - residue) * k->inResidue;
  k->humified = (humus - k->humus) * k->inHumus;
  k->released = k->eaten - (microbes - k->microbes) * k->inMicrobes - k->humified;
}

static inline void setReleaseLine(Class *k) {
  double eaten = k->residue * k->gone;
  double grown = k->decayed * k->residue * k->turned * k->spread;
  double inHumified = k->humusShare * k->inHumus;
  k->atNoYield = eaten * k->inResidue + k->microbes * k->lost * (k->inMicrobes - inHumified);
  k->perYield = -(grown * k->inMicrobes + (eaten - grown) * inHumified);
}

static inline void stepSpent(Class *k) {
  double microbes = k->microbes * k->turned;
  double humus = k->humus + k->humusShare * (k->microbes - microbes);
  k->afterResidue = 0;
  k->afterMicrobes = microbes;
  k->afterHumus = humus;
  k->eaten = 0;
  k->humified = (humus - k->humus) * k->inHumus;
  k->released = (k->microbes - microbes) * k->inMicrobes - k->humified;
}

static inline void setDay(Class *k) {
  if (k->residue > k->crumb) {
    double a = k->decay * k->residueDays;
    double difference = a - k->turnover * k->turnoverDays;
    double apart = fabs(difference);
    k->decayed = a;
    k->gone = -expm1(-a);
    k->spread = apart > 0.1 * a ? (k->gone - k->lost) / (k->turned * difference)
      : apart < 1e-12 ? 1 : -expm1(-difference) / difference;
  } else {
    k->decayed = 0;
    k->gone = k->residueDays > 0 && k->decay > 0 ? 1 : 0;
    k->spread = 1;
  }
}

static inline void stepFreely(Class *k, const Coefficients *c) {
  if (k->residue == 0) {
    stepSpent(k);
    return;
  }
  setDay(k);
  stepAtYield(k, c->assimilation);
}

static void stepStarved(Class *k, double supply, const Coefficients *c) {
  k->residueDays *= most(supply / k->wanted, c->leastDecayWhenStarved);
  setDay(k);
  setReleaseLine(k);
  int isMet = k->atNoYield + k->perYield * c->assimilation >= -supply;
  double yieldLeft = isMet ? c->assimilation : most(0, (k->atNoYield + supply) / -k->perYield);
  stepAtYield(k, yieldLeft);
}

/* ---- cover/leftOver.ts ---- */

static Class *leftOverClass(const Bed *bed, State *s, int placement, int kind) {
  if (s->classCount == MOST_CLASSES) fail("too many classes");
  Class *item = &s->classes[s->classCount++];
  memset(item, 0, sizeof *item);
  item->placement = placement;
  item->kind = kind;
  item->isLeftOver = 1;
  item->crumb = remnant;
  item->lyingFactor = 1;
  item->turnover = kind == GREEN ? bed->c.greenTurnover : bed->c.matureTurnover;
  item->humusCn = bed->c.humusCarbonToNitrogen;
  item->soilRate = placement == DUG_IN ? 1 : placement == HOED_IN ? bed->c.hoedRate : 0;
  item->surfaceRate = placement != ON_TOP ? 0
    : bed->c.surfaceRateGreen * (kind == GREEN ? 1 : bed->c.surfaceRateMatureShare);
  return item;
}

static Class *classBelow(const Bed *bed, State *s, const Class *item) {
  int kind = item->kind == INERT ? WOOD : item->kind;
  if (!item->isLeftOver) return classFor(bed, s, DUG_IN, kind, item->cn);
  Class *below = leftOverClass(bed, s, DUG_IN, kind);
  below->cn = item->cn;
  below->decay = item->decay;
  below->microbeCn = item->microbeCn;
  below->humusShare = item->humusShare;
  turnRatiosRound(below);
  return below;
}

static void joinLeftOvers(const Bed *bed, State *s) {
  int isJoined[MOST_CLASSES] = {0}, isMet[MOST_CLASSES] = {0}, before = s->classCount;
  double yield = bed->c.assimilation;
  /* groups in the order in which they are met */
  for (int from = 0; from < before; from++) {
    const Class *first = &s->classes[from];
    if (first->kind == INERT || isMet[from]) continue;
    int count = 0, members[MOST_CLASSES];
    double residue = 0, inResidue = 0, decay = 0, microbes = 0, inMicrobes = 0, turns = 0;
    double humified = 0, humus = 0, dry = 0;
    for (int at = from; at < before; at++) {
      Class *item = &s->classes[at];
      if (item->placement != first->placement || item->kind != first->kind) continue;
      item->crumb = remnant;
      isMet[at] = 1;
      members[count++] = at;
      residue += item->residue;
      inResidue += item->residue / item->cn;
      decay += item->decay * item->residue;
      microbes += item->microbes;
      inMicrobes += item->microbes / item->microbeCn;
      double weight = item->microbes + yield * item->residue;
      turns += weight;
      humified += item->humusShare * weight;
      humus += item->humus;
      dry += item->lyingDry;
    }
    if (count == 1) continue;
    for (int at = 0; at < count; at++) isJoined[members[at]] = 1;
    double ratio = microbes > 0 ? microbes / inMicrobes : first->microbeCn;
    Class *whole = leftOverClass(bed, s, first->placement, first->kind);
    whole->cn = residue > 0 ? residue / inResidue : first->cn;
    whole->decay = residue > 0 ? decay / residue : first->decay;
    whole->microbeCn = ratio;
    whole->humusShare =
      least(turns > 0 ? humified / turns : first->humusShare, bed->c.humusTurnoverLimit / ratio);
    turnRatiosRound(whole);
    whole->residue = residue;
    whole->microbes = microbes;
    whole->humus = humus;
    whole->lyingDry = dry;
  }
  int kept = 0;
  for (int at = 0; at < s->classCount; at++)
    if (!isJoined[at]) s->classes[kept++] = s->classes[at];
  s->classCount = kept;
}

/* ---- season/dayEvents.ts ---- */

static inline double lyingDry(const State *s) {
  double dry = s->slowLyingDry;
  for (int at = 0; at < s->classCount; at++) dry += s->classes[at].lyingDry;
  return dry;
}

static inline double coverWaterCapacity(double dry, const Coefficients *c) {
  return least(c->coverWaterLimit, c->coverWaterPerDryMatter * dry);
}

static double ammoniaDepthFactor(double laid) {
  if (laid <= 6) return 0.5;
  if (laid <= 10) return 0.5 + (0.5 * (laid - 6)) / 4;
  if (laid <= 25) return 1 + (2 * (laid - 10)) / 15;
  return 3;
}

static double ammoniaPotential(double content, int condition, double laid, const Coefficients *c) {
  double factor = condition == LIMP ? c->ammoniaLimp
    : condition == CRISP ? c->ammoniaCrisp : ammoniaDepthFactor(laid);
  double percent =
    most(0, c->ammoniaSlope * content - c->ammoniaIntercept) * factor * c->ammoniaFactor;
  return least(c->ammoniaLimit, percent) / 100;
}

static void laySlow(const Bed *bed, State *s, double *flows, const Layer *layer) {
  double ready = layer->nitrogen * layer->mineralShare;
  double active = layer->nitrogen * layer->slowShare;
  double rest = layer->nitrogen - ready - active;
  if (layer->placement == ON_TOP) {
    move(bed, s, flows, LAID_READY, ready);
    move(bed, s, flows, SLOW_LAID, active + rest);
    if (layer->slowKind == MEAL) s->topQuick += active;
    else s->topActive += active;
    s->topInert += rest;
    if (layer->slowKind == MANURE) s->manure += bed->c.manureAmmoniaShare * ready;
  } else {
    move(bed, s, flows, DUG_READY, ready);
    move(bed, s, flows, SLOW_LAID, active);
    if (layer->slowKind == MEAL) s->dugQuick += active;
    else s->dugActive += active;
    move(bed, s, flows, SLOW_DUG, rest);
  }
}

static void layLayers(const Bed *bed, State *s, double *flows, int index) {
  const Coefficients *c = &bed->c;
  double water = 0;
  int any = 0;
  for (int at = 0; at < bed->layers; at++) {
    const Layer *layer = &bed->layer[at];
    if (layer->index != index) continue;
    any = 1;
    Class *item = NULL;
    if (layer->kind == SLOW_MATERIAL) laySlow(bed, s, flows, layer);
    else if (layer->nitrogen > 0) {
      int kind = layer->kind == INERT && layer->placement != ON_TOP ? WOOD : layer->kind;
      item = classFor(bed, s, layer->placement, kind, layer->carbon / layer->nitrogen);
      item->residue += layer->nitrogen * item->cn;
      move(bed, s, flows, layer->placement == ON_TOP ? LAID : DUG, layer->nitrogen);
    }
    if (layer->placement != ON_TOP) continue;
    if (layer->condition == JUST_CUT) water += most(0, layer->fresh - layer->dry);
    if (layer->kind != SLOW_MATERIAL) {
      double depth = 0;
      for (int other = 0; other < bed->layers; other++) {
        const Layer *one = &bed->layer[other];
        if (one->index == index && one->placement == ON_TOP && one->material == layer->material)
          depth += one->laidDepth;
      }
      s->unripe += layer->nitrogen *
        ammoniaPotential(layer->dry > 0 ? layer->nitrogen / layer->dry : 0, layer->condition, depth, c);
    }
    if (item) item->lyingDry += layer->dry;
    else s->slowLyingDry += layer->dry;
  }
  if (!any) return;
  double capacity = coverWaterCapacity(lyingDry(s), c);
  s->waterCover += least(water, most(0, capacity - s->waterCover));
}

static void shrinkCover(State *s, double factor) {
  s->unripe *= factor;
  s->ripe *= factor;
  s->manure *= factor;
  s->waterCover *= factor;
  for (int at = 0; at < s->classCount; at++) s->classes[at].lyingDry *= factor;
  s->slowLyingDry *= factor;
}

static void digCoverIn(const Bed *bed, State *s, double *flows, double share) {
  int before = s->classCount;
  for (int at = 0; at < before; at++) {
    Class *item = &s->classes[at];
    if (item->placement != ON_TOP) continue;
    Class *below = classBelow(bed, s, item);
    move(bed, s, flows, DIG_RESIDUE, share * (item->residue / item->cn));
    move(bed, s, flows, DIG_MICROBES, share * (item->microbes / item->microbeCn));
    move(bed, s, flows, DIG_HUMUS, share * (item->humus / item->humusCn));
    below->residue += share * item->residue;
    below->microbes += share * item->microbes;
    below->humus += share * item->humus;
    item->residue *= 1 - share;
    item->microbes *= 1 - share;
    item->humus *= 1 - share;
  }
  move(bed, s, flows, DIG_FREE, share * most(0, s->nitrogen[COVER_FREE]));
  double inert = share * s->topInert;
  move(bed, s, flows, DIG_SLOW, inert);
  s->topInert -= inert;
  s->dugActive += share * s->topActive;
  s->topActive *= 1 - share;
  s->dugQuick += share * s->topQuick;
  s->topQuick *= 1 - share;
  shrinkCover(s, 1 - share);
}

static void rakeOff(const Bed *bed, State *s, double *flows, double share) {
  double small = bed->c.lyingShareOfMicrobesAndHumus;
  for (int at = 0; at < s->classCount; at++) {
    Class *item = &s->classes[at];
    if (item->placement != ON_TOP) continue;
    move(bed, s, flows, RAKE_RESIDUE, share * (item->residue / item->cn));
    move(bed, s, flows, RAKE_MICROBES, share * small * (item->microbes / item->microbeCn));
    move(bed, s, flows, RAKE_HUMUS, share * small * (item->humus / item->humusCn));
    item->residue *= 1 - share;
    item->microbes *= 1 - share * small;
    item->humus *= 1 - share * small;
  }
  move(bed, s, flows, RAKE_FREE, share * most(0, s->nitrogen[COVER_FREE]));
  move(bed, s, flows, RAKE_SLOW, share * (s->topActive + s->topInert + s->topQuick));
  s->topQuick *= 1 - share;
  s->topActive *= 1 - share;
  s->topInert *= 1 - share;
  shrinkCover(s, 1 - share);
}

static void turnSeason(const Bed *bed, State *s, double *flows) {
  for (int at = 0; at < s->classCount; at++) {
    Class *item = &s->classes[at];
    move(bed, s, flows, item->placement == ON_TOP ? HUMUS_COVER : HUMUS_DUG,
      item->humus / item->humusCn);
    item->humus = 0;
  }
  joinLeftOvers(bed, s);
  move(bed, s, flows, DIG_SLOW, s->topInert);
  s->topInert = 0;
}

static inline double reachShare(double root, double lowerDepth) {
  return held(0, 1, (root - topDepth) / lowerDepth);
}

static void turnLowerLayer(const Bed *bed, State *s, double *flows, const double *layer) {
  double grows = layer[0] / s->lowerDepth - 1;
  if (grows == 0) return;
  double held = most(0, s->nitrogen[MINERAL_LOWER]);
  if (grows > 0) move(bed, s, flows, DEEPER, held * grows);
  else move(bed, s, flows, LESS_DEEP, held * -grows);
  s->waterLower = (s->waterLower / s->lowerFull) * layer[1];
  s->lowerDepth = layer[0];
  s->lowerFull = layer[1];
  s->lowerWilt = layer[2];
  for (int at = 0; at < bed->plantings; at++)
    s->plants[at].fullReach = reachShare(bed->planting[at].fullRootDepth, s->lowerDepth);
}

static void beginBusyDay(const Bed *bed, State *s, double *flows, int index) {
  for (int at = 0; at < bed->seasonStarts; at++)
    if (bed->seasonStart[at] == index) {
      turnSeason(bed, s, flows);
      turnLowerLayer(bed, s, flows, bed->lowerLayer[at]);
    }
  for (int at = 0; at < bed->events; at++) {
    const Event *event = &bed->event[at];
    if (event->index != index) continue;
    if (event->kind == RAKE_OFF) rakeOff(bed, s, flows, event->size);
    else if (event->kind == DIG_COVER_IN) digCoverIn(bed, s, flows, event->size);
    else if (event->kind == WATER) s->logged += event->size;
  }
  layLayers(bed, s, flows, index);
}

/* ---- season/dayPlants.ts, crop/ ---- */

static inline double logistic(double steepness, double middle, double at) {
  return 1 / (1 + exp(-steepness * (at - middle)));
}

static double cropCoefficient(const Planting *p, double progress) {
  double initial = p->stages[0], development = p->stages[1], middle = p->stages[2];
  double late = p->stages[3], start = p->kcStart, full = p->kcMiddle;
  if (progress <= initial) return start;
  if (progress < initial + development)
    return start + ((full - start) * (progress - initial)) / development;
  if (progress <= initial + development + middle || late <= 0) return full;
  return full + (p->kcEnd - full) * least(1, (progress - initial - development - middle) / late);
}

static double canopyShare(const Planting *p, double kc, double progress, const Coefficients *c) {
  double range = p->kcMiddle - p->kcStart;
  double grown = range > 0 ? (c->canopyLimit * (kc - p->kcStart)) / range : 0;
  double canopy = held(0, c->canopyLimit, grown);
  return progress > 0.6 ? most(c->lateCanopyLeast, canopy) : canopy;
}

static inline double plantedShare(const Bed *bed, const State *s) {
  double planted = 0;
  for (int at = 0; at < bed->plantings; at++)
    if (s->plants[at].standing) planted += bed->planting[at].share;
  return planted;
}

static inline double shareScale(double planted) { return planted > 1 ? 1 / planted : 1; }

static inline void advance(const Planting *p, Plant *plant, double day, double mean) {
  plant->needToday = 0;
  plant->uptakeToday = 0;
  plant->fixedToday = 0;
  int isGone = plant->done || (p->isCleared && p->clearingDay < day);
  if (!plant->standing && !isGone && day >= p->startDay) plant->standing = 1;
  if (!plant->standing) return;
  plant->degreeDays += most(0, mean - p->baseCelsius);
  double progress =
    p->normalDegreeDays > 0 ? least(1, plant->degreeDays / p->normalDegreeDays) : 1;
  if (progress == plant->progress) return;
  plant->progress = progress;
  plant->rootDepth = p->fullRootDepth * least(1, progress / 0.6);
  double before = plant->wanted;
  double x = held(0, 1, progress);
  plant->wanted =
    (logistic(p->curveSteepness, p->curveMiddle, x) - plant->curveStart) / plant->curveRise;
  plant->needToday = p->need * p->share * (plant->wanted - before);
}

static void advancePlants(const Bed *bed, State *s, double day) {
  const Coefficients *c = &bed->c;
  for (int at = 0; at < bed->plantings; at++)
    advance(&bed->planting[at], &s->plants[at], day, s->mean);
  double planted = plantedShare(bed, s);
  double scale = shareScale(planted);
  s->isPlanted = 0;
  s->transpiration = 0;
  s->evaporation = c->bareCropCoefficient * most(0, 1 - planted);
  s->canopy = 0;
  s->reach = 0;
  s->depletionShare = planted > 0 ? 0 : 0.5;
  for (int at = 0; at < bed->plantings; at++) {
    const Planting *p = &bed->planting[at];
    const Plant *plant = &s->plants[at];
    if (!plant->standing) continue;
    s->isPlanted = 1;
    double share = p->share * scale;
    double kc = cropCoefficient(p, plant->progress);
    double shaded = canopyShare(p, kc, plant->progress, c);
    double wet = most(p->kcStart, c->bareCropCoefficient) * (1 - shaded) + c->evaporationUnderCanopy * shaded;
    s->evaporation += share * wet;
    s->transpiration += share * most(0, kc - wet);
    s->canopy += share * shaded;
    s->reach = most(s->reach, reachShare(plant->rootDepth, s->lowerDepth));
    s->depletionShare += (p->depletionShare * p->share) / planted;
  }
}

static double fixationStage(const Planting *p, double age, double progress) {
  if (age < p->nodulationDays) return 0;
  double middle = (1 + least(0.95, p->firstHarvestDays / p->usualDays)) / 2;
  if (progress <= middle) return 1;
  return most(0, (1 - progress) / (1 - middle));
}

static double nitrateSuppression(const Planting *p, double top, double progress) {
  double pods =
    p->flowerDays < 0 ? p->firstHarvestDays : (p->flowerDays + p->firstHarvestDays) / 2;
  double limit = progress >= pods / p->usualDays ? p->poddingLimit : p->leafyLimit;
  return most(0, 1 - top / limit);
}

static inline double uptakeLimit(double mineral, double reached, const Coefficients *c) {
  return c->uptakeShare * reached * most(0, mineral - c->uptakeFloor);
}

static void takeUp(const Bed *bed, State *s, double *flows, const Planting *p, Plant *plant,
    double day) {
  const Coefficients *c = &bed->c;
  double top = s->foundTop, lower = s->foundLower;
  double share = p->share * s->shareScale;
  double reach = reachShare(plant->rootDepth, s->lowerDepth);
  double limitTop = uptakeLimit(top, share, c);
  double limitLower = uptakeLimit(lower, share * reach, c);
  double limit = limitTop + limitLower;
  double topPart = limit > 0 ? limitTop / limit : 0;
  int fixes = p->hasLegume && !p->noNodules;
  double stage = fixes ? fixationStage(p, day - p->startDay, plant->progress) : 0;
  double usual = fixes && stage > 0
    ? p->usualShareFixed * stage * nitrateSuppression(p, top, plant->progress) : 0;
  double fixed = usual * plant->needToday;
  double asked = plant->needToday - fixed;
  double owed = 0;
  for (int at = 0; at < plant->arrearsCount; at++) owed += plant->arrears[at];
  double taken = least(limit, asked + owed);
  double forToday = least(taken, asked);
  if (fixes && forToday < asked)
    fixed += least(asked - forToday,
      most(0, p->highShareFixed * stage * plant->needToday - fixed));
  double unmet = most(0, plant->needToday - fixed - forToday);
  if (owed > 0 || unmet > 0) {
    double left = taken - forToday;
    for (int at = 0; at < plant->arrearsCount && left > 0; at++) {
      double paid = least(plant->arrears[at], left);
      plant->arrears[at] -= paid;
      left -= paid;
    }
    if (plant->arrearsCount == MOST_ARREARS) fail("too many days of arrears");
    plant->arrears[plant->arrearsCount++] = unmet;
    while (plant->arrearsCount > c->arrearsDays) {
      plant->arrearsCount--;
      memmove(plant->arrears, plant->arrears + 1, plant->arrearsCount * sizeof(double));
    }
  }
  double luxury = p->hasLegume ? 0 : least(limit - taken, plant->needToday * c->luxuryShare *
    held(0, 1, (top - c->luxuryStart) / (c->luxuryFull - c->luxuryStart)));
  if (fixed != 0) move(bed, s, flows, FIXED, fixed);
  move(bed, s, flows, TOP_TAKEN, taken * topPart);
  move(bed, s, flows, LOWER_TAKEN, taken * (1 - topPart));
  if (luxury != 0) {
    move(bed, s, flows, TOP_LUXURY, luxury * topPart);
    move(bed, s, flows, LOWER_LUXURY, luxury * (1 - topPart));
  }
  plant->nitrogen += fixed + taken + luxury;
  plant->fixed += fixed;
  plant->uptake += taken + luxury;
  plant->luxury += luxury;
  plant->needSoFar += plant->needToday;
  plant->metSoFar += fixed + taken;
  plant->uptakeToday = taken + luxury;
  plant->fixedToday = fixed;
}

static inline double demandMet(const Plant *plant) {
  return plant->needSoFar > 0 ? least(1, plant->metSoFar / plant->needSoFar) : 0;
}

static void clearPlant(const Bed *bed, State *s, double *flows, const Planting *p, Plant *plant) {
  double roots = least(plant->nitrogen, p->rootShare * (plant->nitrogen + plant->harvested));
  double tops = plant->nitrogen - roots;
  if (p->topsFate == PULLED) {
    move(bed, s, flows, CLEARED_AWAY, plant->nitrogen);
    plant->removed += plant->nitrogen;
  } else {
    Class *below = classFor(bed, s, DUG_IN, MATURE, bed->c.rootCarbonToNitrogen);
    below->residue += roots * below->cn;
    move(bed, s, flows, ROOTS_LEFT, roots);
    plant->left += roots;
    if (p->topsFate == TOPS_TAKEN) {
      move(bed, s, flows, CLEARED_AWAY, tops);
      plant->removed += tops;
    } else {
      int onTop = p->topsFate == TOPS_STAY;
      Class *item = classFor(bed, s, onTop ? ON_TOP : DUG_IN, p->residueIsGreen ? GREEN : MATURE,
        p->residueCarbonToNitrogen);
      item->residue += tops * item->cn;
      move(bed, s, flows, onTop ? TOPS_LEFT : TOPS_DUG, tops);
      plant->left += tops;
      if (onTop) item->lyingDry += (tops * p->residueCarbonToNitrogen) / carbonOfTops / 1000;
      if (onTop && p->residueIsGreen)
        s->unripe += tops * ammoniaPotential((1000 * carbonOfTops) / p->residueCarbonToNitrogen,
          JUST_CUT, 10, &bed->c);
    }
  }
  plant->nitrogen = 0;
  plant->standing = 0;
  plant->done = 1;
}

static void harvestPlants(const Bed *bed, State *s, double *flows, int index, double day) {
  for (int at = 0; at < bed->plantings; at++) {
    const Planting *p = &bed->planting[at];
    Plant *plant = &s->plants[at];
    if (!plant->standing) continue;
    double wanted = 0;
    if (bed->isBusy[index])
      for (int which = 0; which < bed->events; which++) {
        const Event *event = &bed->event[which];
        if (event->index == index && event->kind == HARVEST && event->planting == at)
          wanted += event->size * p->harvestGramsPerKilogram;
      }
    int spreads = !p->logsHarvest || day > bed->today;
    double last = p->isCleared ? p->clearingDay : p->usualEndDay;
    if (spreads && day >= p->firstHarvestDay && day <= last)
      wanted += (p->harvestNitrogen * p->share * demandMet(plant)) /
        most(1, last - p->firstHarvestDay + 1);
    if (wanted != 0) {
      double grown = plant->nitrogen + plant->harvested;
      double picked = least(wanted, most(0, bed->c.harvestLimit * grown - plant->harvested));
      move(bed, s, flows, PICKED, picked);
      plant->nitrogen -= picked;
      plant->harvested += picked;
    }
    if (p->isCleared && day >= p->clearingDay) clearPlant(bed, s, flows, p, plant);
  }
}

/* ---- soil/water.ts ---- */

static double waterStress(double depletion, double available, double share) {
  if (available <= 0) return 0;
  double readily = share * available;
  if (depletion <= readily) return 1;
  return most(0, (available - depletion) / ((1 - share) * available));
}

static void waterDay(const Bed *bed, State *s) {
  const Coefficients *c = &bed->c;
  double top = s->waterTop, lower = s->waterLower, cover = s->waterCover;
  double topFull = bed->topFull, topWilt = bed->topWilt, reach = s->reach;
  double lowerFull = s->lowerFull, lowerWilt = s->lowerWilt;
  double demand = s->transpiration * s->et0;
  double share =
    held(0.1, 0.8, s->depletionShare + 0.04 * (5 - (demand + s->evaporation * s->et0)));
  double zone = topFull - topWilt + reach * (lowerFull - lowerWilt);
  double readily = share * zone;
  double missing = topFull - top + reach * (lowerFull - lower) - s->logged;
  double refill = bed->keptMoist && s->isPlanted && s->rain < 5 && missing > readily
    ? missing - readily / 2 : 0;
  double watered = s->logged + refill;
  double caught = least(most(0, s->capacity - cover), s->rain + watered);
  cover += caught;
  double throughfall = s->rain + watered - caught;
  double coverDrying = s->et0 * s->hidden * (1 - s->canopy);
  double coverEvaporation = least(cover, coverDrying);
  s->coverMean =
    coverDrying > cover ? (cover * cover) / (2 * coverDrying) : cover - coverDrying / 2;
  cover -= coverEvaporation;
  double spilled = most(0, cover - s->capacity);
  cover -= spilled;
  double intoSoil = throughfall + spilled;
  double evaporable = 1000 * (bed->fieldCapacity - 0.5 * bed->wiltingPoint) * c->evaporationDepth;
  double readilyEvaporable = c->readilyEvaporableShare * evaporable;
  double surfaceDepletion = most(0, topFull - top - intoSoil);
  double drying =
    held(0, 1, (evaporable - surfaceDepletion) / (evaporable - readilyEvaporable));
  double evaporation = drying * most(0,
    s->evaporation * s->et0 * (1 - c->coverEvaporationSaving * s->hidden) - coverEvaporation);
  top += intoSoil - least(evaporation, most(0, top + intoSoil - topWilt));
  double stress =
    waterStress(most(0, topFull - top + reach * (lowerFull - lower)), zone, share);
  double topHeld = most(0, top - topWilt);
  double lowerHeld = most(0, lower - lowerWilt) * reach;
  double weighted = topHeld + c->lowerLayerUptakeWeight * lowerHeld;
  if (weighted > 0) {
    double transpiration = demand * stress;
    top -= least(topHeld, (transpiration * topHeld) / weighted);
    lower -= least(lowerHeld, (transpiration * c->lowerLayerUptakeWeight * lowerHeld) / weighted);
  }
  s->drainageTop = most(0, top - topFull);
  top -= s->drainageTop;
  lower += s->drainageTop;
  s->drainageLower = most(0, lower - lowerFull);
  lower -= s->drainageLower;
  s->waterTop = top;
  s->waterLower = lower;
  s->waterCover = cover;
  s->throughfall = intoSoil;
  s->dryness =
    readily > 0 ? most(0, topFull - top + reach * (lowerFull - lower)) / readily : 0;
}

/* ---- season/dayDecay.ts ---- */

static inline void standStill(Class *item, const Coefficients *c) {
  item->lyingFactor = lyingCarbon(item, c->lyingShareOfMicrobesAndHumus) > 0 ? 1 : 0;
  item->lyingDry *= item->lyingFactor;
}

static inline void keepStep(Class *item, const Coefficients *c) {
  double small = c->lyingShareOfMicrobesAndHumus;
  double before = lyingCarbon(item, small);
  item->residue = item->afterResidue;
  item->microbes = item->afterMicrobes;
  item->humus = item->afterHumus;
  if (item->placement != ON_TOP) return;
  item->lyingFactor = before > 0 ? least(1, lyingCarbon(item, small) / before) : 0;
  item->lyingDry *= item->lyingFactor;
}

static void settleWaiting(const Bed *bed, State *s, double *flows, Class *item) {
  int onTop = item->placement == ON_TOP;
  keepStep(item, &bed->c);
  move(bed, s, flows, onTop ? COVER_EATEN : DUG_EATEN, most(0, item->eaten));
  move(bed, s, flows, onTop ? COVER_HUMIFIED : DUG_HUMIFIED, most(0, item->humified));
  if (item->released >= 0)
    move(bed, s, flows, onTop ? COVER_RELEASED : DUG_RELEASED, item->released);
  else if (onTop) {
    move(bed, s, flows, SOIL_HELD, item->fromSoil);
    move(bed, s, flows, COVER_HELD, most(0, -item->released - item->fromSoil));
  } else move(bed, s, flows, DUG_HELD, item->fromSoil);
}

static inline int isWaiting(const Class *item, int onTop) {
  return item->wanted > 0 && (item->placement == ON_TOP) == onTop;
}

static double shareOut(State *s, int onTop, double supply, const Coefficients *c, double wanted,
    int first) {
  double used = 0;
  for (int at = first; at < s->classCount; at++) {
    Class *item = &s->classes[at];
    if (!isWaiting(item, onTop)) continue;
    if (wanted > supply) stepStarved(item, (supply * item->wanted) / wanted, c);
    used += most(0, -item->released);
  }
  return used;
}

static void decayClasses(const Bed *bed, State *s, double *flows) {
  const Coefficients *c = &bed->c;
  double greenLost = -1, matureLost = -1;
  double eaten[2] = {0}, humified[2] = {0}, freed[2] = {0}, wanted[2] = {0};
  int first[2] = {0}, gives[2] = {0};
  for (int at = 0; at < s->classCount; at++) {
    Class *item = &s->classes[at];
    if (item->kind == INERT) {
      standStill(item, c);
      continue;
    }
    if (item->kind == GREEN) {
      if (greenLost < 0) greenLost = -expm1(-item->turnover * s->soilDays);
      item->lost = greenLost;
    } else {
      if (matureLost < 0) matureLost = -expm1(-item->turnover * s->soilDays);
      item->lost = matureLost;
    }
    item->turned = 1 - item->lost;
    item->residueDays = s->soilDays * item->soilRate + s->surfaceDays * item->surfaceRate;
    item->turnoverDays = s->soilDays;
    stepFreely(item, c);
    int onTop = item->placement == ON_TOP;
    if (item->released < 0) {
      item->wanted = -item->released;
      if (wanted[onTop] == 0) first[onTop] = at;
      wanted[onTop] += item->wanted;
      continue;
    }
    item->wanted = 0;
    gives[onTop] = 1;
    eaten[onTop] += most(0, item->eaten);
    humified[onTop] += most(0, item->humified);
    freed[onTop] += item->released;
    keepStep(item, c);
  }
  if (gives[1]) {
    move(bed, s, flows, COVER_EATEN, eaten[1]);
    move(bed, s, flows, COVER_HUMIFIED, humified[1]);
    move(bed, s, flows, COVER_RELEASED, freed[1]);
  }
  if (gives[0]) {
    move(bed, s, flows, DUG_EATEN, eaten[0]);
    move(bed, s, flows, DUG_HUMIFIED, humified[0]);
    move(bed, s, flows, DUG_RELEASED, freed[0]);
  }
  if (wanted[1] > 0) {
    double free = c->coverFreeShareForTieUp * most(0, s->nitrogen[COVER_FREE]);
    double soil = c->soilShareForCoverTieUp * most(0, s->nitrogen[MINERAL_TOP]);
    double used = shareOut(s, 1, free + soil, c, wanted[1], first[1]);
    double soilPart = used > 0 ? most(0, used - free) / used : 0;
    for (int at = first[1]; at < s->classCount; at++) {
      Class *item = &s->classes[at];
      if (!isWaiting(item, 1)) continue;
      item->fromSoil = soilPart * most(0, -item->released);
      settleWaiting(bed, s, flows, item);
    }
  }
  if (wanted[0] > 0) {
    shareOut(s, 0, most(0, s->nitrogen[MINERAL_TOP]), c, wanted[0], first[0]);
    for (int at = first[0]; at < s->classCount; at++) {
      Class *item = &s->classes[at];
      if (!isWaiting(item, 0)) continue;
      item->fromSoil = most(0, -item->released);
      settleWaiting(bed, s, flows, item);
    }
  }
}

static inline double freedOf(double store, double rate) {
  return store > 0 ? -expm1(-rate) * store : 0;
}

static void decayDay(const Bed *bed, State *s, double *flows) {
  const Coefficients *c = &bed->c;
  if (s->soilDays > 0 || s->surfaceDays > 0) decayClasses(bed, s, flows);
  else
    for (int at = 0; at < s->classCount; at++)
      if (s->classes[at].placement == ON_TOP) standStill(&s->classes[at], c);

  double lying = s->topActive + s->topInert + s->topQuick;
  if (s->topActive + s->dugActive + s->topQuick + s->dugQuick == 0) {
    s->slowLyingFactor = 1;
    return;
  }
  double slowOnTop = freedOf(s->topActive, c->slowRate * s->surfaceDays);
  double quickOnTop = freedOf(s->topQuick, c->mealRate * s->surfaceDays);
  double slowDug = freedOf(s->dugActive, c->slowRate * s->soilDays);
  double quickDug = freedOf(s->dugQuick, c->mealRate * s->soilDays);
  double fromTop = slowOnTop + quickOnTop;
  move(bed, s, flows, SLOW_COVER, fromTop);
  move(bed, s, flows, SLOW_SOIL, slowDug + quickDug);
  s->topActive -= slowOnTop;
  s->topQuick -= quickOnTop;
  s->dugActive -= slowDug;
  s->dugQuick -= quickDug;
  s->slowLyingFactor = lying > 0 ? (lying - fromTop) / lying : 1;
}

/* ---- soil/runoff.ts, season/day.ts ---- */

static double runoff(double rain, double curveNumber) {
  if (curveNumber <= 0) return 0;
  double kept = 25400 / least(100, curveNumber) - 254;
  double beyond = rain - 0.2 * kept;
  return beyond > 0 ? beyond * beyond / (rain + 0.8 * kept) : 0;
}

static inline double leachedShare(double drainage, double full) { return -expm1(-drainage / full); }

static void stepDay(const Bed *bed, State *s, double *flows, int index) {
  const Coefficients *c = &bed->c;
  double *n = s->nitrogen;
  double day = bed->firstDay + index;
  AT(events);
  s->rain = bed->rain[index];
  if (bed->curveNumber >= 0) s->rain -= runoff(s->rain, bed->curveNumber);
  s->et0 = bed->evapotranspiration[index];
  s->mean = bed->mean[index];
  s->airFactor = bed->airFactor[index];
  s->logged = 0;
  if (bed->isBusy[index]) beginBusyDay(bed, s, flows, index);
  AT(plants);
  advancePlants(bed, s, day);

  AT(water);
  s->dry = lyingDry(s);
  s->hidden = s->dry > 0 ? -expm1(-c->coverFractionPerKilogram * s->dry) : 0;
  s->capacity = coverWaterCapacity(s->dry, c);
  waterDay(bed, s);
  s->fill = s->capacity > 0 ? least(1, s->coverMean / s->capacity) : 0;
  double cooling = c->coverCooling * s->hidden * held(0, 1, (s->mean - 8) / 8);
  s->soilCelsius += c->soilWarmingRate * (1 - c->coverDamping * s->hidden) *
    (s->mean - cooling - s->soilCelsius);
  s->soilFactor = temperatureFactor(s->soilCelsius);
  double available =
    held(0, 1, (s->waterTop - bed->topWilt) / (bed->topFull - bed->topWilt));
  s->soilDays = s->soilFactor * (0.2 + 0.8 * held(0, 1, available));
  s->surfaceDays = s->airFactor * (c->coverDryWetness + (1 - c->coverDryWetness) * s->fill);

  AT(losses);
  if (s->drainageLower > 0)
    move(bed, s, flows, LEACHED, n[MINERAL_LOWER] * leachedShare(s->drainageLower, s->lowerFull));
  if (s->drainageTop > c->denitrificationDrainage)
    move(bed, s, flows, DENITRIFIED, n[MINERAL_TOP] * least(1, c->denitrifiedShare * s->soilFactor));
  if (s->drainageTop > 0)
    move(bed, s, flows, DOWN, n[MINERAL_TOP] * leachedShare(s->drainageTop, bed->topFull));
  if (bed->rainOfYear > 0)
    move(bed, s, flows, RAIN, (c->rainNitrogenPerYear * s->rain) / bed->rainOfYear);
  move(bed, s, flows, SOIL, n[SOIL_ORGANIC] * c->soilReleaseRate * s->soilDays);
  if (n[YOUNG_HUMUS] != 0)
    move(bed, s, flows, YOUNG, n[YOUNG_HUMUS] * c->youngHumusRate * s->soilDays);

  AT(decay);
  decayDay(bed, s, flows);
  AT(cover);
  s->slowLyingDry *= s->slowLyingFactor;

  double ripening = c->ammoniaRipening * s->unripe;
  double leaving = c->ammoniaLeaving * s->ripe;
  s->unripe -= ripening;
  s->ripe += ripening - leaving;
  double wet = c->ammoniaDryShare + c->ammoniaWetSlope * s->fill;
  double warm = least(1.5, s->airFactor / factorAt20);
  double fromManure = c->manureAmmoniaRate * warm * s->manure;
  s->manure -= fromManure;
  double demand = leaving * least(1, wet * warm) + fromManure;
  if (n[COVER_FREE] != 0) {
    move(bed, s, flows, AMMONIA, least(demand, c->ammoniaFreeShare * most(0, n[COVER_FREE])));
    double through = s->throughfall;
    double deep = c->washDepth * most(c->washLeastMass, s->dry);
    double washed = least(1, c->washBase + (through > 0 ? through / (through + deep) : 0));
    move(bed, s, flows, WASHED, washed * most(0, n[COVER_FREE]));
  }

  AT(uptake);
  s->foundTop = n[MINERAL_TOP];
  s->foundLower = n[MINERAL_LOWER];
  s->shareScale = shareScale(plantedShare(bed, s));
  for (int at = 0; at < bed->plantings; at++)
    if (s->plants[at].standing) takeUp(bed, s, flows, &bed->planting[at], &s->plants[at], day);
  AT(harvest);
  harvestPlants(bed, s, flows, index, day);
  AT(keep);
}

static void startState(const Bed *bed, State *s) {
  const Coefficients *c = &bed->c;
  memset(s->nitrogen, 0, sizeof s->nitrogen);
  memset(s->plants, 0, sizeof(Plant) * (size_t)bed->plantings);
  s->classCount = 0;
  s->topActive = s->topInert = s->dugActive = s->topQuick = s->dugQuick = s->slowLyingDry = 0;
  s->slowLyingFactor = 1;
  s->unripe = s->ripe = s->manure = 0;
  double soilGrams = bed->bulkDensity * 1000 * 0.3 * 1000;
  s->nitrogen[SOIL_ORGANIC] = ((bed->organicMatter / 100) * soilGrams) /
    c->organicMatterPerCarbon / c->soilCarbonToNitrogen;
  s->nitrogen[MINERAL_TOP] = isnan(bed->startingTop) ? c->startingMineralTop : bed->startingTop;
  s->lowerDepth = bed->lowerDepth;
  s->lowerFull = bed->lowerFull;
  s->lowerWilt = bed->lowerWilt;
  s->nitrogen[MINERAL_LOWER] = (c->startingMineralPer30 * s->lowerDepth) / topDepth;
  s->waterTop = bed->topFull;
  s->waterLower = s->lowerFull;
  s->waterCover = 0;
  int days = bed->days < 11 ? bed->days : 11;
  s->soilCelsius = 0;
  for (int day = 0; day < days; day++) s->soilCelsius += bed->mean[day] / days;
  for (int at = 0; at < bed->plantings; at++) {
    const Planting *p = &bed->planting[at];
    Plant *plant = &s->plants[at];
    plant->curveStart = logistic(p->curveSteepness, p->curveMiddle, 0);
    plant->curveRise = logistic(p->curveSteepness, p->curveMiddle, 1) - plant->curveStart;
    plant->fullReach = reachShare(p->fullRootDepth, s->lowerDepth);
  }
}

static double takeOut(double *flows, const int *which, int count) {
  double sum = 0;
  for (int at = 0; at < count; at++) {
    sum += flows[which[at]];
    flows[which[at]] = 0;
  }
  return sum;
}

static void keepDay(const Bed *bed, const State *s, Watch *watch, double *flows, int index) {
  watch->mineralTop[index] = s->nitrogen[MINERAL_TOP];
  for (int at = 0; at < bed->plantings; at++) {
    const Planting *p = &bed->planting[at];
    const Plant *plant = &s->plants[at];
    double day = bed->firstDay + index;
    if (day < p->startDay || (p->isCleared && day > p->clearingDay)) continue;
    watch->dailyNeed[at][index] = plant->needToday;
    watch->dailyUptake[at][index] = plant->uptakeToday;
    watch->dailyFixed[at][index] = plant->fixedToday;
  }
  int today = (int)(bed->today - bed->firstDay);
  if (index < today) return;
  watch->released[index] = takeOut(flows, released, 6);
  watch->tiedUp[index] = takeOut(flows, tiedUp, 2);
  watch->luxury[index] = takeOut(flows, luxury, 2);
  if (index > today) return;
  watch->mineralLower[index] = s->nitrogen[MINERAL_LOWER];
  double reach = 0;
  for (int at = 0; at < bed->plantings; at++)
    if (s->plants[at].standing) reach = most(reach, s->plants[at].fullReach);
  watch->rootReach[index] = reach;
  watch->released[index] = watch->tiedUp[index] = watch->luxury[index] = NAN;
}

static void watchSeason(const Bed *bed, State *s, Watch *watch, int isShown) {
  double flows[FLOWS];
  AT(start);
  startState(bed, s);
  memset(flows, 0, sizeof flows);
  for (int index = 0; index < bed->days; index++) {
    stepDay(bed, s, flows, index);
    if (isShown) {
      for (int pool = 0; pool < POOLS; pool++) printf("%.17g ", s->nitrogen[pool]);
      for (int flow = 0; flow < FLOWS; flow++) printf("%.17g ", flows[flow]);
      printf("\n");
      memset(flows, 0, sizeof flows);
    } else keepDay(bed, s, watch, flows, index);
  }
  watch->leached = flows[LEACHED];
  for (int at = 0; at < bed->plantings; at++) {
    watch->demand[at] = s->plants[at].needSoFar;
    watch->met[at] = demandMet(&s->plants[at]);
    watch->fixed[at] = s->plants[at].fixed;
  }
}

/* ---- reading, and the two uses ---- */

static FILE *file;

static double number(void) {
  char word[64];
  if (fscanf(file, "%63s", word) != 1) fail("the file ends early");
  char *end;
  double value = strtod(word, &end);
  if (*end) fail(word);
  return value;
}
static int whole(void) { return (int)number(); }
static void section(const char *name) {
  char word[64];
  if (fscanf(file, "%63s", word) != 1 || strcmp(word, name) != 0) fail(name);
}
static void *room(size_t count, size_t size) {
  void *place = calloc(count ? count : 1, size);
  if (!place) fail("no memory");
  return place;
}
static double *series(int days) { return room((size_t)days, sizeof(double)); }

static void readCoefficients(Bed *bed) {
  section("coefficients");
  for (int left = whole(); left > 0; left--) {
    char name[64];
    if (fscanf(file, "%63s", name) != 1) fail("the file ends early");
    double value = number();
#define TAKE(known) if (strcmp(name, #known) == 0) { bed->c.known = value; continue; }
    COEFFICIENTS(TAKE)
    fprintf(stderr, "kernel: it knows no coefficient %s; the day has moved on\n", name);
    exit(1);
  }
}

static void readBed(Bed *bed) {
  readCoefficients(bed);
  section("flows");
  if (whole() != FLOWS) fail("another number of flows");
  for (int flow = 0; flow < FLOWS; flow++) {
    bed->flowFrom[flow] = whole();
    bed->flowTo[flow] = whole();
  }
  section("run");
  bed->firstDay = number();
  bed->days = whole();
  bed->today = number();
  bed->curveNumber = number();
  bed->keptMoist = whole();
  bed->lowerDepth = number();
  bed->topFull = number();
  bed->topWilt = number();
  bed->lowerFull = number();
  bed->lowerWilt = number();
  bed->rainOfYear = number();
  bed->fieldCapacity = number();
  bed->wiltingPoint = number();
  bed->bulkDensity = number();
  bed->organicMatter = number();
  bed->startingTop = number();
  section("weather");
  bed->rain = series(bed->days);
  bed->evapotranspiration = series(bed->days);
  bed->mean = series(bed->days);
  bed->airFactor = series(bed->days);
  for (int day = 0; day < bed->days; day++) {
    bed->rain[day] = number();
    bed->evapotranspiration[day] = number();
    bed->mean[day] = number();
    bed->airFactor[day] = number();
  }
  bed->isBusy = room((size_t)bed->days, 1);
  section("plantings");
  bed->plantings = whole();
  if (bed->plantings > MOST_PLANTS) fail("too many plantings");
  bed->planting = room((size_t)bed->plantings, sizeof(Planting));
  for (int at = 0; at < bed->plantings; at++) {
    Planting *p = &bed->planting[at];
    p->share = number();
    p->startDay = number();
    p->firstHarvestDay = number();
    p->usualEndDay = number();
    p->isCleared = whole();
    p->clearingDay = number();
    p->normalDegreeDays = number();
    p->topsFate = whole();
    p->logsHarvest = whole();
    p->noNodules = whole();
    p->residueIsGreen = whole();
    p->need = number();
    p->harvestNitrogen = number();
    p->harvestGramsPerKilogram = number();
    p->rootShare = number();
    p->curveMiddle = number();
    p->curveSteepness = number();
    p->baseCelsius = number();
    p->usualDays = number();
    p->firstHarvestDays = number();
    p->flowerDays = number();
    p->fullRootDepth = number();
    p->kcStart = number();
    p->kcMiddle = number();
    p->kcEnd = number();
    for (int stage = 0; stage < 4; stage++) p->stages[stage] = number();
    p->depletionShare = number();
    p->residueCarbonToNitrogen = number();
    p->hasLegume = whole();
    p->usualShareFixed = number();
    p->highShareFixed = number();
    p->nodulationDays = number();
    p->leafyLimit = number();
    p->poddingLimit = number();
  }
  section("layers");
  bed->layers = whole();
  bed->layer = room((size_t)bed->layers, sizeof(Layer));
  for (int at = 0; at < bed->layers; at++) {
    Layer *layer = &bed->layer[at];
    layer->index = whole();
    layer->material = whole();
    layer->kind = whole();
    layer->placement = whole();
    layer->condition = whole();
    layer->fresh = number();
    layer->dry = number();
    layer->nitrogen = number();
    layer->carbon = number();
    layer->laidDepth = number();
    layer->mineralShare = number();
    layer->slowShare = number();
    layer->slowKind = whole();
    bed->isBusy[layer->index] = 1;
  }
  section("events");
  bed->events = whole();
  bed->event = room((size_t)bed->events, sizeof(Event));
  for (int at = 0; at < bed->events; at++) {
    Event *event = &bed->event[at];
    event->index = whole();
    event->kind = whole();
    event->planting = whole();
    event->size = number();
    bed->isBusy[event->index] = 1;
  }
  section("seasonStarts");
  bed->seasonStarts = whole();
  bed->seasonStart = room((size_t)bed->seasonStarts, sizeof(int));
  bed->lowerLayer = room((size_t)bed->seasonStarts, sizeof *bed->lowerLayer);
  for (int at = 0; at < bed->seasonStarts; at++) {
    bed->seasonStart[at] = whole();
    for (int part = 0; part < 3; part++) bed->lowerLayer[at][part] = number();
    bed->isBusy[bed->seasonStart[at]] = 1;
  }
  section("end");
}

static double nanoseconds(clockid_t clock) {
  struct timespec now;
  clock_gettime(clock, &now);
  return now.tv_sec * 1e9 + now.tv_nsec;
}

int main(int count, char **words) {
  if (count < 3) fail("kernel FILE check | kernel FILE time RUNS");
  file = fopen(words[1], "r");
  if (!file) fail("no such file");
  Bed bed = {0};
  readBed(&bed);
  fclose(file);
  factorAt15 = curve(15);
  factorAt1 = curve(1) / factorAt15;
  factorAt20 = temperatureFactor(20);
  State *state = room(1, sizeof(State));
  Watch watch = {0};
  watch.mineralTop = series(bed.days);
  watch.mineralLower = series(bed.days);
  watch.rootReach = series(bed.days);
  watch.released = series(bed.days);
  watch.tiedUp = series(bed.days);
  watch.luxury = series(bed.days);
  for (int at = 0; at < bed.plantings; at++) {
    watch.dailyNeed[at] = series(bed.days);
    watch.dailyUptake[at] = series(bed.days);
    watch.dailyFixed[at] = series(bed.days);
  }
  if (strcmp(words[2], "check") == 0) {
    watchSeason(&bed, state, &watch, 1);
    return 0;
  }
  int runs = count > 3 ? atoi(words[3]) : 1000;
#ifdef PARTS
  if (strcmp(words[2], "parts") == 0) {
    struct sigaction looks = {0};
    looks.sa_handler = look;
    looks.sa_flags = SA_RESTART;
    sigaction(SIGPROF, &looks, NULL);
    struct itimerval every = { { 0, 1000 }, { 0, 1000 } };
    setitimer(ITIMER_PROF, &every, NULL);
    for (int run = 0; run < runs; run++) watchSeason(&bed, state, &watch, 0);
#define SAY(name) printf("%s %ld\n", #name, met[part_##name]);
    PART_NAMES(SAY)
    return 0;
  }
#endif
  double fastest = INFINITY;
  double all = nanoseconds(CLOCK_PROCESS_CPUTIME_ID);
  for (int run = 0; run < runs; run++) {
    double from = nanoseconds(CLOCK_MONOTONIC);
    watchSeason(&bed, state, &watch, 0);
    fastest = least(fastest, nanoseconds(CLOCK_MONOTONIC) - from);
  }
  all = nanoseconds(CLOCK_PROCESS_CPUTIME_ID) - all;
  printf("%.0f %.0f %.17g\n", fastest, all, watch.leached);
  return 0;
}
