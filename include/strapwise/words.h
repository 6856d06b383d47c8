/* SPDX-License-Identifier: GPL-3.0-or-later */
/**
 * @file
 * @brief Enumerators of inputs and results, and their words.
 */
#ifndef STRAPWISE_WORDS_H
#define STRAPWISE_WORDS_H

#include <strapwise/status.h>

#ifdef __cplusplus
extern "C" {
#endif

/** Form of the torque equation. */
typedef enum {
    SW_FORM_LINEAR = 1, /**< P/2pi + mu d2/(2 cos alpha) + mu r */
    SW_FORM_EXACT       /**< helix and normal flank angle kept */
} sw_form;

/** How torsion is counted when the stud is loaded towards its yield. */
typedef enum {
    SW_TORSION_PLASTIC = 1, /**< polar modulus pi d^3/12 */
    SW_TORSION_ELASTIC      /**< polar modulus pi d^3/16 */
} sw_torsion;

/** What lies between nut and strap. */
typedef enum {
    SW_SEAT_FLAT = 1, /**< plain nut or washer */
    SW_SEAT_SPHERICAL /**< spherical washer in a conical or dished seat */
} sw_seat;

/** The toe's underside. */
typedef enum {
    SW_NOSE_FLAT = 1, /**< flat land: bears on one of its edges */
    SW_NOSE_ROUND,    /**< radius across the strap's width */
    SW_NOSE_BALL      /**< ball-ended screw or swivel: stays where it is */
} sw_nose;

/** What the heel stands on. */
typedef enum {
    SW_HEEL_BLOCK = 1, /**< solid block, smooth */
    SW_HEEL_SERRATED,  /**< toothed block: cannot slide */
    SW_HEEL_SCREW      /**< slender jack screw: gives way sideways */
} sw_heel;

/** How the stud is held in table or T-nut. */
typedef enum {
    SW_FOOT_HELD = 1, /**< foot cannot rotate */
    SW_FOOT_ROCKING   /**< foot rotates freely */
} sw_foot;

/** Whether the nut slips on its seat while the force grows. */
typedef enum {
    SW_NUT_TURNED = 1, /**< turned up with a spanner */
    SW_NUT_STILL       /**< power clamp, cam, locked nut */
} sw_nut;

/** What keeps the strap from turning with the nut. */
typedef enum {
    SW_RESTRAINT_SHARED = 1, /**< friction at toe and heel, a couple */
    SW_RESTRAINT_HELD,       /**< a stop, or a second spanner on the strap */
    SW_RESTRAINT_FREE        /**< friction at the toe alone: the heel gives */
} sw_restraint;

/** How much of the strap's own bending counts. */
typedef enum {
    SW_STRAP_BENDING = 1, /**< spread of its underside */
    SW_STRAP_RIGID,       /**< none: textbook statics */
    SW_STRAP_FULL         /**< spread, and its slope at the stud */
} sw_strap_kind;

/** State of the seat. */
typedef enum {
    SW_STATE_LEVEL = 1, /**< no tilt at the nut */
    SW_STATE_CONFORMED, /**< the stud is bent until the nut lies flat */
    SW_STATE_RIM,       /**< the nut bears on one edge */
    SW_STATE_SWIVELLED  /**< the spherical pair took the tilt up */
} sw_state;

/** Which way the part is drawn. */
typedef enum {
    SW_PULL_TOWARD = 1, /**< toward the stud */
    SW_PULL_AWAY,       /**< away from the stud */
    SW_PULL_NONE        /**< neither */
} sw_pull;

/** What low and high of a result contain. */
typedef enum {
    SW_BAND_MODEL = 1, /**< the model's own uncertainty */
    SW_BAND_SCATTER    /**< that, and the scatter of torque and friction */
} sw_band;

/** Where a flat nose or block bears. */
typedef enum {
    SW_BEARS_EDGE = 1, /**< inner edge, nearest the stud */
    SW_BEARS_TIP,      /**< outer end of the strap */
    SW_BEARS_NOSE      /**< on its radius or ball */
} sw_bears;

/** What an inverse question is judged by. */
typedef enum {
    SW_BASIS_NOMINAL = 1, /**< the nominal answer */
    SW_BASIS_BAND         /**< the worse end of the band */
} sw_basis;

/** What a run of trials draws. */
typedef enum {
    SW_VARY_ALL = 1, /**< tightening, heights, and what the strap's own band
                          holds: friction, thread play, foot */
    SW_VARY_PRELOAD  /**< tightening alone */
} sw_vary;

/** Whether a torque exists between two limits. */
typedef enum {
    SW_VERDICT_FITS = 1, /**< there is one */
    SW_VERDICT_NONE      /**< the spread is wider than the limits */
} sw_verdict;

/** How a torque tool tells. */
typedef enum {
    SW_TOOL_SETTING = 1, /**< set beforehand, then it clicks or slips */
    SW_TOOL_INDICATING   /**< read while it is pulled */
} sw_tool_kind;

/** Units that torque tools are marked in. */
typedef enum {
    SW_TORQUE_NM = 1, /**< newton metre */
    SW_TORQUE_INLBF,  /**< pound-force inch */
    SW_TORQUE_FTLBF   /**< pound-force foot */
} sw_torque_unit;

/** A part that can give. */
typedef enum {
    SW_GIVES_STUD = 1,       /**< the stud, in its thread */
    SW_GIVES_STUD_THREAD,    /**< the stud's thread, sheared off */
    SW_GIVES_TAPPED_THREAD,  /**< the thread that the stud is screwed into */
    SW_GIVES_NUT,            /**< the nut's thread */
    SW_GIVES_WASHER_BEARING, /**< the strap under washer or nut, crushed */
    SW_GIVES_STRAP           /**< the strap, bent */
} sw_gives;

/** Which way turning feeds. */
typedef enum {
    SW_TURNING_ALONG = 1, /**< along the work, toward the chuck */
    SW_TURNING_FACING,    /**< across its end, toward the axis */
    SW_TURNING_BORING     /**< along a bore, toward the chuck */
} sw_turning_direction;

/** How a milling cutter stands in the work. */
typedef enum {
    SW_MILL_SLOT = 1, /**< as wide as the cutter */
    SW_MILL_SIDE,     /**< along an edge, which the cutter overlaps */
    SW_MILL_FACE      /**< over a strip that lies anywhere under the cutter */
} sw_milling_mode;

/** How the teeth run against the feed, side milling. */
typedef enum {
    SW_CUT_UP = 1, /**< against it: the work lies left of the feed */
    SW_CUT_CLIMB   /**< with it: the work lies right of the feed */
} sw_cut_way;
/** How a screw clamps. */
typedef enum {
    SW_SCREW_PRESSING = 1, /**< with its end */
    SW_SCREW_THROUGH       /**< with its head, through the part */
} sw_screw_kind;

/** Shape of a thread. */
typedef enum {
    SW_PROFILE_V = 1,       /**< ISO and unified, 60 degrees */
    SW_PROFILE_TRAPEZOIDAL, /**< 30 degrees */
    SW_PROFILE_ACME,        /**< 29 degrees */
    SW_PROFILE_SQUARE       /**< flanks square to the axis */
} sw_profile;

/** Which side of a piston the pressure acts on. */
typedef enum {
    SW_SIDE_PUSH = 1, /**< full bore */
    SW_SIDE_PULL      /**< bore less the rod */
} sw_side;

/** How a clamping arm is held. */
typedef enum {
    SW_ARM_SWING = 1, /**< stands out from the piston rod */
    SW_ARM_LEVER      /**< turns about a pivot */
} sw_arm_kind;

/** Hertz contact. */
typedef enum {
    SW_CONTACT_LINE = 1, /**< cylinder */
    SW_CONTACT_POINT     /**< ball */
} sw_contact_kind;

/** How pressure lies on a driver's face. */
typedef enum {
    SW_FACE_WEAR = 1, /**< as on a run-in face, falling with the radius */
    SW_FACE_EVEN      /**< the same everywhere */
} sw_face_pressure;

/** How a chuck grips. */
typedef enum {
    SW_GRIP_OUTSIDE = 1, /**< jaws press inward */
    SW_GRIP_INSIDE       /**< jaws press outward */
} sw_grip;

/** Whether a part stays put. */
typedef enum {
    SW_STAYS_YES = 1, /**< with the wanted margin */
    SW_STAYS_BARELY,  /**< with less than the wanted margin */
    SW_STAYS_NOT      /**< the cut moves it */
} sw_stays;

/** How hold is lost first. */
typedef enum {
    SW_LOSES_SLIDE = 1, /**< the part slides */
    SW_LOSES_TURN,      /**< it turns on its face */
    SW_LOSES_GAP,       /**< its face opens at an edge */
    SW_LOSES_TIP,       /**< it tips over an edge */
    SW_LOSES_LIFT,      /**< it lifts off */
    SW_LOSES_BOND,      /**< the bond tears */
    SW_LOSES_SPEED      /**< the jaws lose their grip to the speed */
} sw_loses;

/** Whether a pad marks the part. */
typedef enum {
    SW_MARK_UNLIKELY = 1, /**< pressure below 60 % of the limit */
    SW_MARK_POSSIBLE,     /**< up to the limit */
    SW_MARK_LIKELY,       /**< above the limit */
    SW_MARK_UNKNOWN       /**< no limit known */
} sw_mark;

/** Which limit a pressure is judged by. */
typedef enum {
    SW_LIMIT_GIVEN = 1, /**< the caller's */
    SW_LIMIT_YIELD,     /**< yield of the material */
    SW_LIMIT_PRESSURE,  /**< limiting surface pressure, VDI 2230 */
    SW_LIMIT_ONSET,     /**< yield below a Hertz contact */
    SW_LIMIT_TENSILE, /**< half the tensile strength, where no yield is known */
    SW_LIMIT_UNKNOWN  /**< none known */
} sw_limit_kind;

/** How the part rests before the cut. */
typedef enum {
    SW_REST_STAYS = 1, /**< it stays */
    SW_REST_ROCKS,     /**< it rocks under its own clamps */
    SW_REST_MOVES,     /**< the side pull of the straps moves it */
    SW_REST_LIGHT,     /**< a support carries less than it must */
    SW_REST_LOOSE      /**< nothing presses it on its supports */
} sw_rest;

/** Lists of words. */
typedef enum {
    SW_WORDS_FORM = 1, /**< sw_form */
    SW_WORDS_TORSION,  /**< sw_torsion */
    SW_WORDS_SEAT,     /**< sw_seat */
    SW_WORDS_NOSE,     /**< sw_nose */
    SW_WORDS_HEEL,     /**< sw_heel */
    SW_WORDS_FOOT,     /**< sw_foot */
    SW_WORDS_NUT,      /**< sw_nut */
    SW_WORDS_STRAP,    /**< sw_strap_kind */
    SW_WORDS_STATE,    /**< sw_state */
    SW_WORDS_PULL,     /**< sw_pull */
    SW_WORDS_BAND,     /**< sw_band */
    SW_WORDS_BEARS,    /**< sw_bears */
    SW_WORDS_BASIS,    /**< sw_basis */
    SW_WORDS_SYSTEM,   /**< sw_system */
    SW_WORDS_VARY,     /**< sw_vary */
    SW_WORDS_VERDICT,  /**< sw_verdict */
    /** sw_tool_kind */
    SW_WORDS_TOOL_KIND,
    /** sw_torque_unit */
    SW_WORDS_TORQUE_UNIT,
    SW_WORDS_GIVES,     /**< sw_gives */
    SW_WORDS_RESTRAINT, /**< sw_restraint */
    SW_WORDS_SHOW,      /**< sw_show */
    SW_WORDS_VIEW,      /**< sw_view */
    SW_WORDS_ABOUT,     /**< sw_about */
    SW_WORDS_PART,      /**< sw_part */
    SW_WORDS_NEEDED,    /**< sw_needed */
    /** sw_turning_direction */
    SW_WORDS_TURNING,
    SW_WORDS_MILLING,     /**< sw_milling_mode */
    SW_WORDS_CUT_WAY,     /**< sw_cut_way */
    SW_WORDS_SCREW,       /**< sw_screw_kind */
    SW_WORDS_PROFILE,     /**< sw_profile */
    SW_WORDS_SIDE,        /**< sw_side */
    SW_WORDS_ARM,         /**< sw_arm_kind */
    SW_WORDS_CONTACT,     /**< sw_contact_kind */
    SW_WORDS_FACE,        /**< sw_face_pressure */
    SW_WORDS_GRIP,        /**< sw_grip */
    SW_WORDS_STAYS,       /**< sw_stays */
    SW_WORDS_LOSES,       /**< sw_loses */
    SW_WORDS_MARK,        /**< sw_mark */
    SW_WORDS_LIMIT,       /**< sw_limit_kind */
    SW_WORDS_CLAMP_KIND,  /**< sw_clamp_kind */
    SW_WORDS_CUT_KIND,    /**< sw_cut_kind */
    SW_WORDS_CLAMP_FAULT, /**< sw_clamp_fault */
    SW_WORDS_DEPTH,       /**< sw_depth */
    SW_WORDS_REST,        /**< sw_rest */
    SW_WORDS_GOES,        /**< sw_goes */
    SW_WORDS_PUSHED,      /**< sw_pushed */
    SW_WORDS_CORNERS,     /**< sw_corners */
    SW_WORDS_IDLE,        /**< sw_idle */
    SW_WORDS_FACING,      /**< sw_facing */
    SW_WORDS_GOVERNS,     /**< sw_governs */
    SW_WORDS_REMEDY,      /**< sw_remedy */
    SW_WORDS_COUNT = SW_WORDS_REMEDY
} sw_words;

/** Word of an enumerator ("flat"), or NULL when there is none. */
SW_API const char *sw_word(int list, int value);

/** Enumerator of a word, or 0 when the list does not have it. */
SW_API int sw_word_value(int list, const char *word);

#ifdef __cplusplus
}
#endif
#endif
