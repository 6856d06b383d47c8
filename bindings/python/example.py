# SPDX-License-Identifier: GPL-3.0-or-later
"""Torque list of a small fixture: an invented thin plate under five straps."""
import strapwise as sw

# name, stud, toe force wanted in N, stud to toe and stud to heel in mm
STRAPS = (("front left", "M12", 4000, 30, 60),
          ("front right", "M12", 4000, 30, 60),
          ("rear left", "M12", 3000, 35, 55),
          ("rear right", "M12", 3000, 35, 55),
          ("end", "1/2-13", 2500, 28, 62))
FT_LBF = sw.unit_factor("ft-lbf", sw.KIND_TORQUE)

print("strap        stud    torque N.m  ft-lbf    toe N    warnings")
for name, stud, toe_force_N, stud_to_toe_mm, stud_to_heel_mm in STRAPS:
    q = sw.StrapIn(thread=stud, lubrication="oiled", part_height_mm=25,
                   heel_height_mm=25.5, stud_to_toe_mm=stud_to_toe_mm,
                   stud_to_heel_mm=stud_to_heel_mm)
    nut = sw.strap_torque(q, toe_force_N)
    r = sw.strap(q.copy(preload_N=nut.preload_N))
    print("%-12s %-7s %10.1f %7.1f  %4.0f..%-4.0f  %s" % (
        name, stud, nut.torque_Nm, nut.torque_Nm / FT_LBF, r.toe_force_low_N,
        r.toe_force_high_N, ", ".join(sw.warnings(r))))
print(len(sw.assumed(q.copy(preload_N=1))), "values a strap were assumed.")
print("Not checked:", *sw.not_checked(), sep="\n- ")
