/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Spell: the name of a field as an option, and the words of the library as
 * words of the command.
 */
#include "cli.h"

#include <stdlib.h>
#include <string.h>

/* Names that are not simply the field without its unit. */
static const struct {
    const char *field, *option, *also;
} exception[] = {
    {"designation", "--thread", NULL},
    {"tool_kind", "--kind", NULL},
    {"pad_thickness_mm", "--pad", "--pad-thickness"},
    {"slot_width_mm", "--slot", "--slot-width"},
    {"kc11_MPa", "--kc11", NULL},
    {"side_pull_N", "--side-pull-limit", NULL},
    {"toe_error_pct", "--toe-error-limit", NULL},
};

static const char *const unit_ending[] = {
    "_m_per_min", "_rpm", "_mm_per_N", "_mm_per_m", "_mm2", "_mm", "_Nm",
    "_N",         "_MPa", "_deg",      "_pct",      "_kg",  "_W",  "_m"};

void spell_option(const char *field, char *name, size_t room, const char **also)
{
    if (also)
        *also = NULL;
    for (size_t i = 0; i < sizeof exception / sizeof exception[0]; i++)
        if (strcmp(exception[i].field, field) == 0) {
            copy_cut(name, room, exception[i].option);
            if (also)
                *also = exception[i].also;
            return;
        }
    size_t n = strlen(field);
    for (size_t i = 0; i < sizeof unit_ending / sizeof unit_ending[0]; i++) {
        const size_t m = strlen(unit_ending[i]);
        if (n > m && strcmp(field + n - m, unit_ending[i]) == 0) {
            n -= m;
            break;
        }
    }
    size_t at = 0;
    for (const char *c = "--"; *c && at + 1 < room; c++)
        name[at++] = *c;
    for (size_t i = 0; i < n && at + 1 < room; i++)
        name[at++] = (char)(field[i] == '_' ? '-' : field[i]);
    name[at] = '\0';
}

static const struct {
    const char *field, *purpose;
} purpose_row[] = {
    {"thread", "thread of the stud: M12, M12x1.25, 1/2-13, 10-32"},
    {"designation", "thread: M12, M12x1.25, 1/2-13, 10-32"},
    {"lubrication", "state of thread and nut face: unknown, dry, oiled, ..."},
    {"grade", "grade of the stud: 8.8, 10.9, grade-5, A2-70, ..."},
    {"preload_N", "tension in the stud"},
    {"torque_Nm", "torque on the nut or screw"},
    {"use", "fraction of yield to load the stud to, 0.9 or 90%"},
    {"nut_factor", "K in torque = K x diameter x tension"},
    {"mu_thread", "friction in the thread"},
    {"mu_seat", "friction under the nut"},
    {"friction_radius_mm", "mean radius on which the nut rubs"},
    {"prevailing_torque_Nm", "torque to run the unloaded nut"},
    {"free_length_mm", "stud between nut and foot, for the turn"},
    {"form", "form of the torque equation"},
    {"torsion", "how the twist counts towards yield"},
    {"proof_fraction", "part of the proof load not to be exceeded"},
    {"stud_to_toe_mm", "stud axis to toe contact, measured on the table"},
    {"stud_to_heel_mm", "stud axis to heel contact, measured on the table"},
    {"part_height_mm", "part over the table"},
    {"heel_height_mm", "heel support over the table"},
    {"tilt_deg", "instead of the two heights; heel high is positive"},
    {"pad_thickness_mm", "pad between toe and part"},
    {"step_mm", "bent strap: toe lower than heel when level"},
    {"strap_thickness_mm", "thickness of the strap"},
    {"strap_width_mm", "full width of the strap"},
    {"slot_width_mm", "width lost to the slot"},
    {"strap_modulus_MPa", "Young's modulus of the strap"},
    {"strap_yield_MPa", "yield of the strap"},
    {"nose_radius_mm", "radius of a round nose"},
    {"toe_land_mm", "strap lying on the part, flat nose"},
    {"heel_land_mm", "strap lying on the heel block"},
    {"heel_screw_diameter_mm", "root diameter of a jack screw as heel"},
    {"toe_compliance_mm_per_N", "sideways give of the part"},
    {"heel_compliance_mm_per_N", "sideways give of the heel support"},
    {"mu_toe", "friction of the toe on the part"},
    {"mu_heel", "friction of the strap on the heel"},
    {"mu_heel_high", "its upper end, for the range"},
    {"stud_length_mm", "free stud, foot to nut face"},
    {"stud_modulus_MPa", "Young's modulus of the stud"},
    {"washer_diameter_mm", "plain washer under the nut; 0mm is none"},
    {"washer_thickness_mm", "its thickness"},
    {"rim_radius_mm", "where a tilted nut bears"},
    {"seat_slip", "friction along the slope while the nut turns"},
    {"sphere_radius_mm", "radius of a spherical washer"},
    {"mu_sphere", "friction in the spherical pair"},
    {"permitted_tilt_deg", "tilt the spherical pair takes up"},
    {"thread_play_deg", "tilt of the nut on its thread, for the range"},
    {"slot_clearance_mm", "way the nut can move along the strap"},
    {"stud_end_mm", "stud standing out over the nut, for the highest point"},
    {"seat", "what lies between nut and strap"},
    {"nose", "underside of the toe"},
    {"heel", "what the heel stands on"},
    {"foot", "how the stud is held in table or T-nut"},
    {"restraint", "what keeps the strap from turning with the nut"},
    {"nut", "turned up with a spanner, or not (power clamp)"},
    {"strap", "how much of the strap's own bending counts"},
    {"tool", "a usual tool: click-25Nm, dial-75inlbf, ..."},
    {"range_low_Nm", "lowest mark of your own tool's scale"},
    {"range_high_Nm", "end of its scale"},
    {"resolution_Nm", "step to which it is set or read"},
    {"deviation_pct", "permitted deviation, 4 or 4%"},
    {"usable_fraction", "lowest usable part of the end of the scale"},
    {"tool_kind", "set beforehand (clicks, slips), or read"},
    {"torque_unit", "unit of its scale"},
    {"side_pull_N", "find tilt: largest side pull on the part"},
    {"toe_error_pct", "find tilt: largest error of the toe force, 5 or 5%"},
    {"vial_mm_per_m", "find tilt, --svg: one division of the level"},
    {"basis", "find tilt: judge the nominal answer or the band"},
    {"toe_force_N", "find place, find torque: wanted toe force"},
    {"hold_N", "least force, which the low end of the spread must reach"},
    {"flat_N", "force that the high end of the spread must stay under"},
    {"nut_class", "class of the nut: 8, 10, 12, grade-5, A2-70, ..."},
    {"material", "what the stud is screwed into: strapwise materials"},
    {"strap_material", "material of the strap: strapwise materials"},
    {"engaged_length_mm", "full threads of the stud that are screwed in"},
    {"factor", "how many times the load the threads must hold"},
    {"stud_tensile_MPa", "tensile strength of the stud"},
    {"stud_shear_ratio", "shear over tensile strength of the stud"},
    {"tensile_MPa", "tensile strength of what it is screwed into"},
    {"shear_strength_MPa", "shear strength of what it is screwed into"},
    {"nut_proof_MPa", "proof stress of the nut"},
    {"pressure_limit_MPa", "what the strap stands under nut or washer"},
    {"major_diameter_mm", "of the stud's thread, least"},
    {"pitch_diameter_mm", "of the stud's thread, least"},
    {"nut_pitch_diameter_mm", "of the tapped thread, largest"},
    {"nut_minor_diameter_mm", "of the tapped thread, largest"},
    {"method", "way of tightening, for its scatter: strapwise methods"},
    {"scatter_pct", "scatter of the preload in all, 25 or 25% for ±25 %"},
    {"tool_scatter_pct", "scatter of the torque tool alone, 4%"},
    {"factor_scatter_pct", "scatter of the nut factor alone, 20%"},
    {"published_coverage", "part of all tightenings inside those ±"},
    {"coverage", "part of all tightenings between low and high, 95%"},
    {"height_scatter_mm", "± of heel height over part height"},
    {"trials", "how many straps are drawn"},
    {"seed", "the same seed draws the same straps"},
    {"threads", "threads at work; the answer is the same"},
    {"vary", "what is drawn"},
    {"straps", "how many hold the part"},
    {"cut_N", "largest sideways force of the cut"},
    {"part_length_mm", "longer side of the part"},
    {"part_width_mm", "its shorter side"},
    {"cut_offset_mm", "how far the cut passes from the straps' middle"},
    {"strap_radius_mm", "of the toes from that middle"},
    {"friction", "of the part on its supports"},
    {"toe_limit_N", "force that no toe may exceed"},
    {"seat_N", "force that seats a toe, whatever the cut"},
    {"toe_area_mm2", "area on which one toe bears"},
    {"facing", "pairs across the part, or all from one side"},
    {"kc11_MPa", "force per area of a chip of 1 mm by 1 mm"},
    {"mc", "exponent: how much harder thin chips are to cut"},
    {"rake_deg", "rake of the tool"},
    {"reference_rake_deg", "rake that kc1.1 holds for"},
    {"rake_effect_pct", "fall of the force for each degree of rake"},
    {"wear_factor", "force over that of a sharp tool, 1 to 1.5"},
    {"unit_power_MPa", "energy per volume: 3W.s/mm3, 0.8hp.min/in3"},
    {"direction", "which way turning feeds"},
    {"feed_mm", "feed for each turn"},
    {"lead_deg", "angle between cutting edge and feed"},
    {"thrust_ratio", "force square to the edge over the cutting force"},
    {"speed_rpm", "of the spindle, for the power"},
    {"cutting_speed_m_per_min", "instead of it: 120m/min, 400ft/min"},
    {"mode", "slot, along an edge, or over a strip"},
    {"way", "teeth against the feed, or with it"},
    {"teeth", "of the cutter"},
    {"feed_per_tooth_mm", "feed for each tooth"},
    {"depth_mm", "depth of cut"},
    {"width_mm", "width of cut across the feed"},
    {"offset_mm", "face: middle of the strip left of the cutter's axis"},
    {"helix_deg", "of a right-hand helix, which lifts"},
    {"corner_deg", "edge against the floor; 90deg is a square corner"},
    {"radial_ratio", "force square to the edge over that along the rim"},
    {"lift_share", "part of the helix's full lift"},
    {"feed_direction_deg", "way of the feed, counterclockwise from x"},
    {"diameter_mm", "of the cutter or drill; turning: of the work"},
    {"point_deg", "angle of the drill's point"},
    {"chisel_ratio", "chisel edge over diameter; 0.03 is a split point"},
    {"thrust_ratio_low", "thrust of the lips over kc f D/2"},
    {"thrust_ratio_high", "the same, upper end"},
    {"work_factor", "handbook's Kd, 24000 in steel of 200 HB"},
    {"confidence", "of the intervals, 0.95 or 95%"},
    {"proportion", "part of the studs that an interval is to hold"},
    {"center_limit_N", "largest axial load the live centre is made for"},
    {"normal1_N", "normal force on the first pad"},
    {"normal2_N", "normal force on the second pad"},
    {"distance_mm", "first pad to second"},
    {"across_N", "push across the line of the pads, through its middle"},
    {"along_N", "push along the line"},
    {"couple_Nm", "couple of the cut"},
    {"x1_mm", "support 1, x"},
    {"y1_mm", "support 1, y"},
    {"x2_mm", "support 2, x"},
    {"y2_mm", "support 2, y"},
    {"x3_mm", "support 3, x"},
    {"y3_mm", "support 3, y"},
    {"x_mm", "place of the force, x"},
    {"y_mm", "place of the force, y"},
    {"screw", "presses with its end, or holds with its head"},
    {"profile", "shape of the thread"},
    {"screw_diameter_mm", "outside diameter of the thread"},
    {"pitch_mm", "pitch"},
    {"starts", "threads side by side; the lead is pitch times starts"},
    {"mean_diameter_mm", "diameter on which the thread rubs"},
    {"flank_angle_deg", "half the thread angle"},
    {"mu_collar", "friction under the end, collar or head"},
    {"collar_radius_mm", "mean radius on which end, collar or head rubs"},
    {"pad_diameter_mm", "outside of pad, collar or head that bears"},
    {"pad_hole_mm", "hole in it"},
    {"force_N", "force along the screw; on pad or contact"},
    {"hand_force_N", "force at the end of the handle"},
    {"handle_length_mm", "screw axis to hand"},
    {"pressure_MPa", "supply pressure over the atmosphere"},
    {"low_pressure_MPa", "pressure it may fall to: the interlock's"},
    {"bore_mm", "bore"},
    {"rod_mm", "rod diameter, which a pulling piston loses"},
    {"piston_area_mm2", "effective area, instead of bore and rod"},
    {"side", "which side the pressure acts on"},
    {"efficiency", "part left by the friction of seals and pivots"},
    {"spring_N", "return spring that is to be overcome"},
    {"limit_N", "largest force the maker allows"},
    {"arm_kind", "stands out from the piston, or turns about a pivot"},
    {"arm_mm", "piston axis or pivot to the contact on the part"},
    {"input_arm_mm", "pivoted arm: pivot to where it is pushed"},
    {"input_force_N", "pull of the piston, instead of pressure and bore"},
    {"guide_length_mm", "swing arm: length over which the rod is guided"},
    {"mu_guide", "swing arm: friction of the rod in its guide"},
    {"rated_force_N", "force the maker allows at the rated arm"},
    {"rated_arm_mm", "arm of the rating"},
    {"rated_pressure_MPa", "pressure of the rating"},
    {"vacuum_MPa", "gauge reading below the atmosphere"},
    {"altitude_m", "height over the sea"},
    {"atmosphere_MPa", "pressure of the air"},
    {"seal_length_mm", "length inside the seal line"},
    {"seal_width_mm", "width inside the seal line"},
    {"seal_area_mm2", "area inside the seal line"},
    {"mu_face", "friction of the part on plate, driver or face"},
    {"weight_N", "weight of the part"},
    {"side_cut_N", "cut sideways, along the plate"},
    {"cut_height_mm",
     "height of the cut over supports, plate or driver's face"},
    {"lift_N", "pull of the cut upward; vacuum: at the middle"},
    {"rim_lift_N", "cut that lifts at the rim"},
    {"required_margin", "wanted margin on the cut, 1.5 to 4 is usual"},
    {"shear_MPa", "shear strength by the data sheet"},
    {"tension_MPa", "tension strength, across the joint, by the data sheet"},
    {"sheet_factor", "factor that the data sheet or its maker wants on them"},
    {"bond_scatter_pct", "scatter of a bond either way"},
    {"bond_length_mm", "length of the bond"},
    {"bond_width_mm", "width of the bond"},
    {"bond_area_mm2", "area that is bonded"},
    {"stud1_N", "tension of the first stud"},
    {"stud2_N", "tension of the second stud"},
    {"span_mm", "first stud to second stud"},
    {"pad1_mm", "first stud to first pad, along the bar"},
    {"pad2_mm", "first stud to second pad, along the bar"},
    {"bar_width_mm", "width of the bar"},
    {"bar_thickness_mm", "thickness of the bar"},
    {"hole_mm", "hole or slot for a stud"},
    {"bar_material", "material of the bar, by its key"},
    {"bar_modulus_MPa", "Young's modulus"},
    {"bar_yield_MPa", "yield"},
    {"contact", "a cylinder on its line, or a ball"},
    {"radius1_mm", "radius of the first body"},
    {"radius2_mm", "radius of the second; negative: hollow"},
    {"contact_length_mm", "line contact: its length"},
    {"material1", "material of the first body, by its key"},
    {"material2", "material of the second body, by its key"},
    {"modulus1_MPa", "Young's modulus of the first"},
    {"modulus2_MPa", "Young's modulus of the second"},
    {"poisson1", "Poisson's ratio of the first"},
    {"poisson2", "Poisson's ratio of the second"},
    {"yield_MPa", "yield of the softer body"},
    {"pad_length_mm", "flat pad: its length"},
    {"pad_width_mm", "flat pad, or round nose along its line: its width"},
    {"pad_area_mm2", "flat pad: area that bears"},
    {"pad_material", "material of pad or nose, by its key"},
    {"part_material", "material of the part, by its key"},
    {"part_limit_MPa", "pressure that the part stands, instead of the table's"},
    {"pad_limit_MPa", "pressure that the pad stands, instead of the table's"},
    {"thrust_N", "thrust of the tailstock"},
    {"driver_diameter_mm", "outside of the driver's face"},
    {"driver_bore_mm", "hole or recess in it"},
    {"driven_faces", "2 only where the cap drives too"},
    {"face_pressure", "how the pressure lies on the face"},
    {"cut_diameter_mm", "diameter at which the tool cuts"},
    {"tangential_cut_N", "cut round the disc"},
    {"radial_cut_N", "cut toward or from the axis"},
    {"axial_cut_N", "cut along the axis; positive: toward the driver"},
    {"cap_radius_mm", "of the cap, only where its quill resists tilting"},
    {"chuck_force_N", "force of all jaws together, standing"},
    {"jaws", "number of jaws"},
    {"jaw_mass_kg", "one jaw with its base jaw"},
    {"jaw_radius_mm", "axis to the jaw's centre of gravity"},
    {"speed_rpm", "speed of the spindle"},
    {"grip", "jaws grip from outside or inside"},
    {"mu_jaw", "friction of jaw on part"},
    {"grip_diameter_mm", "diameter at the jaws"},
    {"feed_cut_N", "cut along the axis"},
    {"clamp_factor", "factor on the force the chuck must have standing"},
    {"cut_N", "cut in the plane of the faces"},
    {"faces", "2 only where neither face can move sideways"},
    {"squeeze_N", "squeeze that is there"},
};

const char *spell_purpose(const char *field)
{
    for (size_t i = 0; i < sizeof purpose_row / sizeof purpose_row[0]; i++)
        if (strcmp(purpose_row[i].field, field) == 0)
            return purpose_row[i].purpose;
    return NULL;
}

/* The table of Wagner and Fischer, row by row; the tails of long words do not
 * count. */
int spell_distance(const char *a, const char *b)
{
    enum { MOST = 47 };
    int row[MOST + 1];
    int n = 0;
    while (n < MOST && b[n])
        n++;
    for (int j = 0; j <= n; j++)
        row[j] = j;
    for (int i = 0; i < MOST && a[i]; i++) {
        int corner = row[0];
        row[0] = i + 1;
        for (int j = 0; j < n; j++) {
            const int change = corner + (a[i] != b[j]);
            const int step = (row[j] < row[j + 1] ? row[j] : row[j + 1]) + 1;
            corner = row[j + 1];
            row[j + 1] = change < step ? change : step;
        }
    }
    return row[n];
}

void spell_quoted(page *p, const char *word)
{
    enum { SHOWN = 40 };
    page_add(p, "\"");
    size_t n = 0;
    for (; n < SHOWN && word[n]; n++) {
        const char c = word[n];
        page_add_n(p, c < 0x20 || c > 0x7e ? "?" : &c, 1);
    }
    page_add(p, word[n] ? "...\"" : "\"");
}

static int is_name_part(char c)
{
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') ||
           (c >= '0' && c <= '9') || c == '_';
}

static int is_field(request *r, const char *name)
{
    for (int i = 0; i < r->options; i++)
        if (r->option[i].slot.field &&
            strcmp(r->option[i].slot.field->name, name) == 0)
            return 1;
    return r->topic && topic_input(r->topic, &r->question, name).field;
}

void spell_message(page *p, request *r, const sw_error *err)
{
    /* a name in front is the field at fault; further on only names with an
     * underscore are surely fields and not plain words */
    for (const char *at = err->message; *at;) {
        size_t n = 0;
        while (is_name_part(at[n]))
            n++;
        char name[48] = "";
        if (n > 0 && n < sizeof name) {
            memcpy(name, at, n);
            name[n] = '\0';
        }
        const int field = at == err->message ? strcmp(name, err->field) == 0
                                             : strchr(name, '_') != NULL;
        if (name[0] && field && is_field(r, name)) {
            char spelled[48];
            spell_option(name, spelled, sizeof spelled, NULL);
            const int positional = strcmp(r->command->positional, name) == 0;
            page_add(p, positional ? spelled + 2 : spelled);
        } else {
            page_add_n(p, at, n ? n : 1);
        }
        at += n ? n : 1;
    }
}
